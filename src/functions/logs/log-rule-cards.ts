import type { LogRuleName } from "../../math/logs/log-rules";

/** What a person needs to know of a log rule to choose it. */
export interface LogRuleCard {
  otherNames: readonly string[];
  kind: "formula" | "table";
  measured: string;
  /** What rounding "table" does. */
  asTable: string;
  source: string;
}

const SMALL_END = "small end, inside bark";
const WHOLE_SIZES = "whole inch (half dropped), even feet";
const NO_TABLE = "no printed table seen";
const IN_PIECES = `${SMALL_END}; over 20 ft as two or more logs`;

/** The card of every rule, in the order of the rules. */
export const LOG_RULE_CARDS: Readonly<Record<LogRuleName, LogRuleCard>> = {
  "International 1/4": {
    otherNames: ["International", "Intl", "Int'l", ...internationalSpellings("1/4")],
    kind: "formula",
    measured: IN_PIECES,
    asTable: `${WHOLE_SIZES}, nearest 5`,
    source: "Michigan MCL 290.401; Massachusetts GL c.96 s.11A",
  },
  "International 1/8": {
    otherNames: internationalSpellings("1/8"),
    kind: "formula",
    measured: IN_PIECES,
    asTable: NO_TABLE,
    source: "Michigan MCL 290.401 before its kerf factor; Larsen",
  },
  Doyle: {
    otherNames: ["Doyle rule"],
    kind: "formula",
    measured: SMALL_END,
    asTable: `${WHOLE_SIZES}, nearest 1`,
    source: "Louisiana RS 3:4641",
  },
  Scribner: {
    otherNames: ["Scribner formula", "Scribner rule"],
    kind: "formula",
    measured: SMALL_END,
    asTable: `${NO_TABLE}: see Scribner Decimal C`,
    source: "Larsen, a fit to the diagrams of 1846",
  },
  "Scribner Decimal C": {
    otherNames: ["Decimal C", "Scribner C", "Scribner Dec C", "Scribner Decimal"],
    kind: "table",
    measured: SMALL_END,
    asTable: `always: ${WHOLE_SIZES}, in tens`,
    source: "Wengert, Log Volume, 2001; legal rule of Georgia OCGA 2-14-80",
  },
  "Doyle-Scribner": {
    otherNames: ["Doyle Scribner rule"],
    kind: "formula",
    measured: SMALL_END,
    asTable: `${NO_TABLE}; always whole inches`,
    source: "metaglossary, Doyle-Scribner; parts as Doyle and Scribner",
  },
  Vermont: {
    otherNames: ["Humphrey", "Vermont rule"],
    kind: "formula",
    measured: "small end, inside bark, average",
    asTable: "whole inch (half dropped)",
    source: "9 VSA 2693",
  },
  "Two-thirds": {
    otherNames: ["Big Sandy cube", "Two-thirds rule"],
    kind: "formula",
    measured: "mid-length, or mean of both ends",
    asTable: NO_TABLE,
    source: "USFS Bulletin 36",
  },
  "Inscribed square": {
    otherNames: ["Inscribed square rule"],
    kind: "formula",
    measured: SMALL_END,
    asTable: NO_TABLE,
    source: "USFS Bulletin 36; plain geometry",
  },
  Adirondack: {
    otherNames: ["Adirondack standard", "Market", "Adirondack market"],
    kind: "formula",
    measured: SMALL_END,
    asTable: NO_TABLE,
    source: "Freese 1973; Adirondack Almanack; other sizes from memory",
  },
};

/** The names a rule is asked for by: each key with its other spellings. */
export const LOG_RULE_NAMES = Object.fromEntries(
  Object.entries(LOG_RULE_CARDS).map(([name, card]) => [name, card.otherNames]),
) as unknown as Readonly<Record<LogRuleName, readonly string[]>>;

/** Int. 1/4 in, Int'l 1/4 inch and the like, as scale tickets have it. */
function internationalSpellings(kerf: "1/4" | "1/8"): string[] {
  return ["International", "Intl", "Int'l", "Int"].flatMap((name) =>
    ["", " in", " inch"].map((unit) => `${name} ${kerf}${unit}`),
  );
}
