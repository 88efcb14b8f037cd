import { inches, logLength, optional, sameForAll, zeroAsText } from "../../cells/read";
import { spread } from "../../cells/spread";
import { biggestLogIn, throatFitIn, CUSTOMARY_ROOM_IN } from "../../math/sawing/throat-fit";

/**
 * Inches to spare between the mill's opening and a log as it turns; minus when it will not pass.
 *
 * Measure the log over its knots, flare and bark where it is thickest. The sweep is the gap between the log and a
 * string stretched along its hollow side.
 *
 * @customfunction THROATFIT
 * @returns Inches to spare
 * @example =BOLE.THROATFIT(40, 16, 20, 12, 2) gives 18.875
 * @example =BOLE.THROATFIT(30, 28, 33, 10) gives -3
 * @example =BOLE.THROATFIT(30, 33, 28, 10) gives #N/A
 * @caution A log that is let down into a mill it does not pass can jam or roll: measure the log again on the deck.
 * @words will it fit, too big, capacity, opening, does the log fit, too big for the mill, will it fit through
 * @see BIGGESTLOG
 * @picture throat, sweep
 */
export const THROATFIT = spread(
  {
    /** Clear opening of the mill between posts, and under the beam. */
    throatIn: sameForAll(inches),
    /** Diameter of the small end. */
    smallIn: inches,
    /** Diameter of the large end. */
    largeIn: inches,
    /** Length of the log, which limits the sweep that can be. */
    lengthFt: logLength,
    /** Largest gap under a string along the hollow side. */
    sweepIn: optional(inches, 0),
    /** Room to keep, both sides together. */
    clearanceIn: optional(inches, 0),
  },
  throatFitIn,
);

/**
 * Largest log diameter to take on for a mill's opening.
 *
 * A foot of room over the biggest log is customary (common practice, no source): for knots, flare and turning.
 *
 * @customfunction BIGGESTLOG
 * @returns Inches
 * @example =BOLE.BIGGESTLOG(84) gives 72
 * @example =BOLE.BIGGESTLOG(10) gives #N/A
 * @words maximum diameter, capacity, how big a log, largest log, log too big
 * @see THROATFIT
 * @picture throat
 */
export const BIGGESTLOG = spread(
  {
    /** Clear opening of the mill. */
    throatIn: inches,
    /** Room to keep over the log. */
    clearanceIn: optional(zeroAsText(inches), CUSTOMARY_ROOM_IN),
  },
  biggestLogIn,
);
