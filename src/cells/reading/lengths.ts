import { bySpelling, IN_PER_FT, LENGTHS } from "../../math/units";
import { shown } from "../cell";
import { Unreadable } from "../error";
import { declared, numberOrText, type Declaration } from "./argument";
import { commaRefusal, NUMBER, tidied, valueOf } from "./digits";

/** No length of this trade is longer or shorter; what is, is a slip of the finger. */
const LONGEST_IN = 100_000;
const SHORTEST_IN = 1e-6;

/**
 * Excel turns 5/4, 8-6 or 1/32, typed into a General cell, into a day's number: 5/4 is a day of this year, 1/32 the first
 * of January 1932. These are 1930, the earliest year of two digits, to 2050, with the hour as their fraction. No size in
 * inches is as large.
 */
const DATE_SERIALS = { from: 10_959, to: 55_000 };

/** Metric text comes back under a round inch by the last binary digit, so it is rounded to so many steps an inch. */
const METRIC_STEPS_PER_IN = 1e9;

const MARK = { feet: `(?:'|${spellings("ft")})`, inches: `(?:"|${spellings("in")})` };
const FEET_AND_INCHES = new RegExp(`^(${NUMBER}) ?${MARK.feet} ?-?(?:(${NUMBER}) ?${MARK.inches}?)?$`);
const INCHES = new RegExp(`^(${NUMBER}) ?${MARK.inches}$`);
const METRIC = new RegExp(`^(${NUMBER}) ?(${spellings("mm", "cm", "m")})$`);
const QUARTERS = /^(\d+) ?q$/;
const FEET_DASH_INCHES = /^(\d+)-(\d+(?:\.\d*)?(?:[ -]\d+\/\d+)?)$/;
const BARE = new RegExp(`^(${NUMBER})$`);

const INCHES_IN = bySpelling(LENGTHS);

/** A pattern for what is written for these units, with a point behind it or none. */
function spellings(...units: readonly (keyof typeof LENGTHS)[]): string {
  return `(?:${units.flatMap((unit) => [unit, ...LENGTHS[unit].also]).join("|")})\\.?`;
}

const EXAMPLES = { inches: "14.5, 14 1/2, 5/4 or 36 cm", feet: `8.5, 8'6", 102 in or 2.4 m` };

/**
 * The longest that can be met in the trade, in feet: more is most often a length in inches. No log, board or beam of a
 * small mill is near it (common practice, no source; the longest logs scaled whole are about 40 ft).
 */
const LONGEST_FT = { log: 65, board: 65, span: 65, stem: 200 };

/** A size in inches: diameter, width, thickness, kerf. A bare number is inches. */
export const inches = length("size", "inches", "0 in", (cell, as) => inchesIn(cell, as, "inches"));

/** A length in feet. A bare number is feet, and 8-6 is 8 ft 6 in. Kept in inches until here. */
export const feet = length("length", "feet", "0 ft", (cell, as) => inchesIn(cell, as, "feet") / IN_PER_FT);

/** The length of a log, which no log of the trade exceeds. */
export const logLength = feetUpTo(LONGEST_FT.log);
/** The length of a board, or of what is stacked and bundled of boards. */
export const boardLength = feetUpTo(LONGEST_FT.board);
/** The length between two supports. */
export const spanLength = feetUpTo(LONGEST_FT.span);
/** Length of a whole stem before it is cut into logs. */
export const stemLength = feetUpTo(LONGEST_FT.stem);

function length(kind: string, bare: "inches" | "feet", zeroAs: string, read: (cell: unknown, as: string) => number) {
  return declared<number>({ kind, bare, reads: EXAMPLES[bare], zero: "blank", zeroAs }, "number", read);
}

function feetUpTo(longest: number): Declaration<number> {
  return length("length", "feet", "0 ft", (cell, as) => {
    const lengthFt = inchesIn(cell, as, "feet") / IN_PER_FT;
    if (lengthFt <= longest) return lengthFt;
    const written = typeof cell === "number" ? cell : Number(cell);
    const slip = Number.isNaN(written) ? "" : ` (${written} ft? for ${written} inches write ${written} in)`;
    throw new Unreadable(as, `feet up to ${longest}${slip}`, shown(cell));
  });
}

function inchesIn(cell: unknown, name: string, bare: "inches" | "feet"): number {
  const examples = EXAMPLES[bare];
  const wanted = `${bare}, such as ${examples}`;
  const given = numberOrText(cell, name, wanted);
  const scale = bare === "feet" ? IN_PER_FT : 1;
  const size = typeof given === "number" ? notADate(given, name) * scale : inchesInText(given, name, wanted, bare);
  if (size < SHORTEST_IN) throw new Unreadable(name, `${bare} above 0, such as ${examples}`, shown(cell));
  if (size > LONGEST_IN) throw new Unreadable(name, `${bare} up to ${Math.floor(LONGEST_IN / scale)}`, shown(cell));
  return size;
}

/** Whether a number where a size is asked for is a day that the sheet made of what was typed. */
export function isDateSerial(given: number): boolean {
  return given >= DATE_SERIALS.from && given < DATE_SERIALS.to;
}

function notADate(given: number, name: string): number {
  if (isDateSerial(given))
    throw new Unreadable(
      name,
      "a size",
      `${given}, a date: the sheet turned what was typed (5/4, 8-6) into a day. Type '5/4 with the apostrophe, or format the column as Text`,
    );
  return given;
}

function inchesInText(text: string, name: string, wanted: string, bare: "inches" | "feet"): number {
  const refuse = (reason: string): never => {
    throw new Unreadable(name, reason, shown(text));
  };
  const comma = commaRefusal(text);
  if (comma) return refuse(comma);
  const written = tidied(text);
  let found: RegExpExecArray | null;
  let size: number | undefined;
  if ((found = BARE.exec(written))) size = bareSize(found[1]!, bare, name);
  else if ((found = INCHES.exec(written))) size = valueOf(found[1]!);
  else if ((found = METRIC.exec(written))) size = metric(valueOf(found[1]!), found[2]!);
  else if ((found = QUARTERS.exec(written))) size = Number(found[1]) / 4;
  else if ((found = FEET_AND_INCHES.exec(written))) size = feetAndInches(found[1]!, found[2], refuse);
  else if ((found = FEET_DASH_INCHES.exec(written)))
    size =
      bare === "feet"
        ? feetAndInches(found[1]!, found[2], refuse)
        : refuse(`${wanted} (8-6 is feet and inches only where a log or board length is asked; here write 8'6")`);
  return size ?? refuse(wanted);
}

/** A date of a column that was formatted as Text too late is typed text too: its day's number. */
function bareSize(written: string, bare: "inches" | "feet", name: string) {
  const size = valueOf(written);
  return size === undefined ? undefined : notADate(size, name) * (bare === "feet" ? IN_PER_FT : 1);
}

function feetAndInches(feetText: string, inchText: string | undefined, refuse: (reason: string) => never) {
  const feetGiven = valueOf(feetText);
  const inchesGiven = inchText === undefined ? 0 : valueOf(inchText);
  if (feetGiven === undefined || inchesGiven === undefined) return undefined;
  if (inchesGiven >= IN_PER_FT) return refuse("less than 12 inches after the feet");
  if (inchesGiven > 0 && !Number.isInteger(feetGiven)) return refuse("whole feet before the inches");
  return feetGiven * IN_PER_FT + inchesGiven;
}

function metric(given: number | undefined, unit: string) {
  if (given === undefined) return undefined;
  return Math.round(given * INCHES_IN[unit.replace(".", "")]! * METRIC_STEPS_PER_IN) / METRIC_STEPS_PER_IN;
}
