import { inches, matrix, named, number, optional, percent } from "../../cells/read";
import { spread, table } from "../../cells/spread";
import { lumberRecovery } from "../../math/sawing/recovery";
import { sawVariation } from "../../math/sawing/saw-variation";
import { targetSizeIn } from "../../math/sawing/target-size";

/**
 * Green size to set the saw to, so that boards dry and plane to the finished size.
 *
 * Planing and shrinkage make the critical size; sawing variation comes on top, times the factor for the share of
 * boards that may come out under. The printed factor for none, 3.09, leaves one board in a thousand under.
 * SAWVARIATION answers the standard deviation to use: its total.
 *
 * @customfunction TARGETSIZE
 * @returns Inches
 * @example =BOLE.TARGETSIZE(1.56, 0.06) gives 1.62
 * @example =BOLE.TARGETSIZE(1, 0.1875, 8, 0.02, "5%") gives 1.3238
 * @example =BOLE.TARGETSIZE(1, 0, 0, 0.02, "40%") gives #N/A
 * @words green thickness, allowance, scant, oversize
 * @see SAWVARIATION
 * @picture target
 */
export const TARGETSIZE = spread(
  {
    /** Size wanted, dry and planed. */
    finishedIn: inches,
    /** Taken off by planing, both faces together. */
    planingIn: optional(inches, 0),
    /** Shrinkage from green to dry across that size, up to 20 %; half a percent is 0.5%. */
    shrinkagePercent: optional(percent, 0),
    /** Standard deviation of sawn size. */
    variationIn: optional(inches, 0),
    /** Share of boards that may come out under, up to 15 %; half a percent is 0.5%. */
    undersizePercent: optional(percent, 0),
  },
  targetSizeIn,
);

/**
 * How much the saw strays, from thickness readings with a row for each board.
 *
 * Take the same number of readings on every board, along both edges. The total is the standard deviation of all
 * readings: it is the one TARGETSIZE asks for, and it is not the root of the other two squared and added.
 *
 * @customfunction SAWVARIATION
 * @returns A table: mean, within boards, between boards, total (inches)
 * @example =BOLE.SAWVARIATION({1.70,1.73,1.71,1.72;1.67,1.72,1.70,1.71}) gives {"figure","inches";"mean",1.7075;"within boards",0.0178;"between boards",0.0106;"total",0.0183}
 * @example =BOLE.SAWVARIATION({1.70,1.73}) gives #N/A
 * @words size control, thick and thin, wavy, standard deviation, accuracy, uneven boards, boards come out uneven
 * @see TARGETSIZE
 * @picture readings
 */
export const SAWVARIATION = table(
  {
    /** Thickness readings, a row for each board; a blank is a reading not taken. */
    boardsIn: named("readings", matrix(inches)),
  },
  (asked) => {
    const { meanIn, withinIn, betweenIn, totalIn } = sawVariation(asked);
    return [
      ["figure", "inches"],
      ["mean", meanIn],
      ["within boards", withinIn],
      ["between boards", betweenIn],
      ["total", totalIn],
    ];
  },
);

/**
 * Lumber recovery factor: board feet out of each cubic foot of log.
 *
 * @customfunction RECOVERY
 * @returns Board feet per cubic foot
 * @example =BOLE.RECOVERY(300, 40) gives 7.5
 * @example =BOLE.RECOVERY(300, "many") gives #VALUE!
 * @words yield, lrf, how much lumber
 */
export const RECOVERY = spread(
  {
    /** Board feet tallied. */
    boardFeet: number,
    /** Cubic feet of the log, inside bark. */
    cubicFeet: number,
  },
  lumberRecovery,
);
