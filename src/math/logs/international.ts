import { sumOf } from "../numbers";
import { mustBeScalable, type Limits, type Log } from "./log";
import { nearest } from "../rounding";
import { LENGTH_CLASS_FT, tableClass, wholeInches } from "./table-class";

const SECTION_FT = 4;
/** The rule lets the diameter grow half an inch in each 4 ft. */
const TAPER_IN_PER_FT = 0.5 / SECTION_FT;
/** From the smallest whole inch at which a section is above zero: the formula meets zero at 3.2 in. */
export const INTERNATIONAL_LIMITS: Limits = { rule: "International", smallestIn: 4 };
/** Longer logs are scaled as two or more (FSH 2409.11, appendix 1). */
const LONGEST_SCALED_AS_ONE_FT = 20;
/** What the wider kerf leaves of the 1/8-inch rule: 19/21, as the statutes print it. */
const QUARTER_INCH_KERF = 0.904762;
/** Printed tables of the 1/4-inch rule go by 5 board feet. */
const PRINTED_STEP_BF = 5;

/**
 * Board feet in a log by the International 1/8-inch rule: 4-foot sections, each half an inch thicker than the one above.
 *
 * A last section under 4 ft counts by its share. Over 20 ft the log is scaled as two or more of equal length, by the
 * rule's own taper; where the lower diameters can be measured, scale each piece by itself.
 *
 * @formula BF = sum(eighthAsOneLog(diameterIn: D + start / 8, lengthFt: l));
 *   start = steps(0, lengthFt - l / 2, l) [ft]; l = lengthFt / pieces [ft]; pieces = ceil(lengthFt / 20);
 *   D = diameterIn
 * @source Michigan MCL 290.401, the 4-ft section and its taper
 * @source Larsen, closed forms for 8, 12, 16 and 20 ft
 * @source FSH 2409.11, appendix 1: 20 ft the longest log scaled as one
 * @range D from 4 in: the formula meets zero at 3.2 in
 * @checked 285 of 285 sums by the closed forms for 4 to 20 ft, 4 to 60 in, and their ratio to the 1/4-inch rule
 */
export function internationalEighthBoardFeet(log: Log): number {
  mustBeScalable(log, INTERNATIONAL_LIMITS);
  const pieces = Math.ceil(log.lengthFt / LONGEST_SCALED_AS_ONE_FT);
  return sumOf(piecesOf(log, new Array<number>(pieces).fill(log.lengthFt / pieces)), eighthAsOneLog);
}

/**
 * Board feet in a log by the International 1/4-inch rule.
 *
 * @formula BF = 0.904762 * internationalEighthBoardFeet()
 * @source Michigan MCL 290.401
 * @source Massachusetts GL c.96 s.11A
 * @range as the 1/8-inch rule
 */
export function internationalQuarterBoardFeet(log: Log): number {
  return QUARTER_INCH_KERF * internationalEighthBoardFeet(log);
}

/**
 * Board feet in a log as printed tables of the International 1/4-inch rule have it.
 *
 * A log over 20 ft is divided into even feet, the longer pieces at the butt, each piece entered by its own whole inch.
 *
 * @formula BF = sum(nearest(0.904762 * eighthAsOneLog(diameterIn: wholeInches(diameterIn: D + before(l) / 8),
 *   lengthFt: l), 5)); D = wholeInches() [in]; L = down(lengthFt, 2) [ft]; pieces = ceil(L / 20);
 *   l = 2 * floor((L / 2 + steps(0, pieces, 1)) / pieces) [ft]
 * @source Wengert log volume, International 1/4-inch log volume
 * @range beyond the printed 6 to 26 in and 6 to 16 ft the formula goes on with the same rounding
 * @checked 123 of 126 cells of Wengert's International 1/4 table; 15 in by 16 ft, 17 by 14 and 21 by 8 are 5 higher in print
 */
export function internationalQuarterTableBoardFeet(log: Log): number {
  mustBeScalable(log, { ...INTERNATIONAL_LIMITS, shortestFt: LENGTH_CLASS_FT, enteredBy: tableClass });
  const entry = tableClass(log);
  return sumOf(piecesOf(entry, evenPieces(entry.lengthFt)), (piece) =>
    nearest(
      PRINTED_STEP_BF,
      QUARTER_INCH_KERF * eighthAsOneLog({ ...piece, diameterIn: wholeInches(piece.diameterIn) }),
    ),
  );
}

/**
 * Board feet in a log up to 20 ft by the International 1/8-inch rule.
 *
 * @formula BF = sum((0.22 * d^2 - 0.71 * d) * share) [board feet]; d = diameterIn + above / 8 [in];
 *   share = min(4, lengthFt - above) / 4; above = steps(0, lengthFt, 4) [ft]
 * @source Michigan MCL 290.401, the 4-ft section and its taper
 */
export function eighthAsOneLog({ diameterIn, lengthFt }: Log): number {
  let boardFeet = 0;
  for (let above = 0; above < lengthFt; above += SECTION_FT) {
    const d = diameterIn + TAPER_IN_PER_FT * above;
    boardFeet += ((0.22 * d ** 2 - 0.71 * d) * Math.min(SECTION_FT, lengthFt - above)) / SECTION_FT;
  }
  return boardFeet;
}

/** The log cut into lengths from the top down, each with the diameter the rule's taper gives it. */
function piecesOf({ diameterIn }: Log, lengthsFt: readonly number[]): Log[] {
  let above = 0;
  return lengthsFt.map((lengthFt) => {
    const piece = { diameterIn: diameterIn + TAPER_IN_PER_FT * above, lengthFt };
    above += lengthFt;
    return piece;
  });
}

/** Even feet, as nearly equal as possible, the longer ones last. */
function evenPieces(lengthFt: number): number[] {
  const pieces = Math.ceil(lengthFt / LONGEST_SCALED_AS_ONE_FT);
  const classes = lengthFt / LENGTH_CLASS_FT;
  return Array.from({ length: pieces }, (_, i) => LENGTH_CLASS_FT * Math.floor((classes + i) / pieces));
}
