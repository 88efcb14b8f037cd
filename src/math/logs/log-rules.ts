import { ADIRONDACK_LIMITS, adirondackBoardFeet } from "./adirondack";
import { DOYLE_LIMITS, doyleBoardFeet, doyleTableBoardFeet } from "./doyle";
import { DOYLE_SCRIBNER_LIMITS, doyleScribnerBoardFeet } from "./doyle-scribner";
import {
  INTERNATIONAL_LIMITS,
  internationalEighthBoardFeet,
  internationalQuarterBoardFeet,
  internationalQuarterTableBoardFeet,
} from "./international";
import type { Limits, Log } from "./log";
import { SCRIBNER_LIMITS, scribnerBoardFeet } from "./scribner";
import { SCRIBNER_DECIMAL_C_LIMITS, scribnerDecimalCBoardFeet } from "./scribner-decimal-c";
import {
  INSCRIBED_SQUARE_LIMITS,
  inscribedSquareBoardFeet,
  TWO_THIRDS_LIMITS,
  twoThirdsBoardFeet,
} from "./square-rules";
import { VERMONT_LIMITS, vermontBoardFeet, vermontTableBoardFeet } from "./vermont";

/** What a person needs to know of a log rule to choose it, and its formulas. */
export interface LogRule {
  otherNames: readonly string[];
  kind: "formula" | "table";
  measured: string;
  limits: Limits;
  /** What rounding "table" does. */
  asTable: string;
  source: string;
  /** Where the one diameter is taken. */
  measuredAt: "small end" | "middle";
  boardFeet: (log: Log) => number;
  /** Board feet as the printed table has it; left out where no printed table was seen. */
  tableBoardFeet?: (log: Log) => number;
}

const SMALL_END = "small end, inside bark";
const WHOLE_SIZES = "whole inch (half dropped), even feet";
const NO_TABLE = "no printed table seen";
const IN_PIECES = `${SMALL_END}; over 20 ft as two or more logs`;

/** Every board-foot rule that has a source, the default first. */
export const LOG_RULE_CARDS = {
  "International 1/4": {
    otherNames: ["International", "Intl", "Int'l", ...internationalSpellings("1/4")],
    kind: "formula",
    measured: IN_PIECES,
    limits: INTERNATIONAL_LIMITS,
    asTable: `${WHOLE_SIZES}, nearest 5`,
    source: "Michigan MCL 290.401; Massachusetts GL c.96 s.11A",
    measuredAt: "small end",
    boardFeet: internationalQuarterBoardFeet,
    tableBoardFeet: internationalQuarterTableBoardFeet,
  },
  "International 1/8": {
    otherNames: internationalSpellings("1/8"),
    kind: "formula",
    measured: IN_PIECES,
    limits: INTERNATIONAL_LIMITS,
    asTable: NO_TABLE,
    source: "Michigan MCL 290.401 before its kerf factor; Larsen",
    measuredAt: "small end",
    boardFeet: internationalEighthBoardFeet,
  },
  Doyle: {
    otherNames: ["Doyle rule"],
    kind: "formula",
    measured: SMALL_END,
    limits: DOYLE_LIMITS,
    asTable: `${WHOLE_SIZES}, nearest 1`,
    source: "Louisiana RS 3:4641",
    measuredAt: "small end",
    boardFeet: doyleBoardFeet,
    tableBoardFeet: doyleTableBoardFeet,
  },
  Scribner: {
    otherNames: ["Scribner formula", "Scribner rule"],
    kind: "formula",
    measured: SMALL_END,
    limits: SCRIBNER_LIMITS,
    asTable: `${NO_TABLE}: see Scribner Decimal C`,
    source: "Larsen, a fit to the diagrams of 1846",
    measuredAt: "small end",
    boardFeet: scribnerBoardFeet,
  },
  "Scribner Decimal C": {
    otherNames: ["Decimal C", "Scribner C", "Scribner Dec C", "Scribner Decimal"],
    kind: "table",
    measured: SMALL_END,
    limits: SCRIBNER_DECIMAL_C_LIMITS,
    asTable: `always: ${WHOLE_SIZES}, in tens`,
    source: "Wengert, Log Volume, 2001; legal rule of Georgia OCGA 2-14-80",
    measuredAt: "small end",
    boardFeet: scribnerDecimalCBoardFeet,
    tableBoardFeet: scribnerDecimalCBoardFeet,
  },
  "Doyle-Scribner": {
    otherNames: ["Doyle Scribner rule"],
    kind: "formula",
    measured: SMALL_END,
    limits: DOYLE_SCRIBNER_LIMITS,
    asTable: `${NO_TABLE}; always whole inches`,
    source: "metaglossary, Doyle-Scribner; parts as Doyle and Scribner",
    measuredAt: "small end",
    boardFeet: doyleScribnerBoardFeet,
  },
  Vermont: {
    otherNames: ["Humphrey", "Vermont rule"],
    kind: "formula",
    measured: "small end, inside bark, average",
    limits: VERMONT_LIMITS,
    asTable: "whole inch (half dropped)",
    source: "9 VSA 2693",
    measuredAt: "small end",
    boardFeet: vermontBoardFeet,
    tableBoardFeet: vermontTableBoardFeet,
  },
  "Two-thirds": {
    otherNames: ["Big Sandy cube", "Two-thirds rule"],
    kind: "formula",
    measured: "mid-length, or mean of both ends",
    limits: TWO_THIRDS_LIMITS,
    asTable: NO_TABLE,
    source: "USFS Bulletin 36",
    measuredAt: "middle",
    boardFeet: twoThirdsBoardFeet,
  },
  "Inscribed square": {
    otherNames: ["Inscribed square rule"],
    kind: "formula",
    measured: SMALL_END,
    limits: INSCRIBED_SQUARE_LIMITS,
    asTable: NO_TABLE,
    source: "USFS Bulletin 36; plain geometry",
    measuredAt: "small end",
    boardFeet: inscribedSquareBoardFeet,
  },
  Adirondack: {
    otherNames: ["Adirondack standard", "Market", "Adirondack market"],
    kind: "formula",
    measured: SMALL_END,
    limits: ADIRONDACK_LIMITS,
    asTable: NO_TABLE,
    source: "Freese 1973; Adirondack Almanack; other sizes from memory",
    measuredAt: "small end",
    boardFeet: adirondackBoardFeet,
  },
} satisfies Record<string, LogRule>;

export type LogRuleName = keyof typeof LOG_RULE_CARDS;

/** The names a rule is asked for by: each key with its other spellings. */
export const LOG_RULES = Object.fromEntries(
  Object.entries(LOG_RULE_CARDS).map(([name, card]) => [name, card.otherNames]),
) as unknown as Readonly<Record<LogRuleName, readonly string[]>>;

/** Int. 1/4 in, Int'l 1/4 inch and the like, as scale tickets have it. */
function internationalSpellings(kerf: "1/4" | "1/8"): string[] {
  return ["International", "Intl", "Int'l", "Int"].flatMap((name) =>
    ["", " in", " inch"].map((unit) => `${name} ${kerf}${unit}`),
  );
}
