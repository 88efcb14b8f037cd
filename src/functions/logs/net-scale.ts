import { forWholeList, inches, list, logLength, mayBeBlank, number, optional, zeroCounts } from "../../cells/read";
import { spread } from "../../cells/spread";
import { netScaleBoardFeet, overrunPercent } from "../../math/logs/net-scale";
import { scaleLengthFt } from "../../math/logs/scale-length";

/**
 * Log length credited after trim, down to whole feet.
 *
 * Who rounds how: Wengert to the last full foot; the Idaho contest rules by 2 ft with at least 4 in of trim; USDA Bulletin
 * 711 disregards the 2 to 9 in that logs are cut over-length.
 *
 * @customfunction SCALELENGTH
 * @returns Feet
 * @example =BOLE.SCALELENGTH("16'4""", 4) gives 16
 * @example =BOLE.SCALELENGTH("15'10""", 4, 2) gives 14
 * @example =BOLE.SCALELENGTH(1, 6) gives #N/A
 * @words trim allowance, log length, over-length
 * @picture log-trim
 */
export const SCALELENGTH = spread(
  {
    /** Length of the log. */
    lengthFt: logLength,
    /** Trim taken off first. */
    trimIn: optional(inches, 0),
    /** Step of the credited length. */
    stepFt: optional(logLength, 1),
  },
  scaleLengthFt,
);

/**
 * Net scale: gross scale less its deductions.
 *
 * A deduction under 1 is a share of the gross, so that a percent-formatted cell works: 0.12 is 12 percent. Over 1 it is
 * board feet. 1 itself may be one board foot or a cell of 100 percent, and is refused: for a log lost whole give its gross
 * scale, and take one board foot off the gross.
 *
 * All deductions of the range come off one log. A column of logs goes with one deduction for all; beside a column of
 * deductions it is refused, since every log would lose them all: write one formula a row.
 *
 * @customfunction NETSCALE
 * @returns Board feet
 * @example =BOLE.NETSCALE(300, {32;0.1}) gives 238
 * @example =BOLE.NETSCALE(300, {200;150}) gives #N/A
 * @example =BOLE.NETSCALE(300, 100%) gives #N/A
 * @example =BOLE.NETSCALE({300;200}, {30;20}) gives #VALUE!
 * @words defect, deduction, net board feet
 */
export const NETSCALE = spread(
  {
    /** Gross scale of the log in board feet. */
    grossBf: forWholeList(number, "deductions"),
    /** The deductions of that log, a range: board feet, or shares of the gross such as 12% or 0.12. */
    deductions: mayBeBlank(list(number), []),
  },
  netScaleBoardFeet,
);

/**
 * Percent that the lumber tally is over the log scale; minus when it is under.
 *
 * @customfunction OVERRUN
 * @returns Percent
 * @example =BOLE.OVERRUN(150, 100) gives 50
 * @example =BOLE.OVERRUN(201163, 209910) gives -4.2
 * @example =BOLE.OVERRUN(-5, 100) gives #VALUE!
 * @words mill tally, recovery, underrun
 */
export const OVERRUN = spread(
  {
    /** Lumber tally in board feet. */
    sawnBf: zeroCounts(number),
    /** Net log scale in board feet. */
    scaledBf: number,
  },
  overrunPercent,
);
