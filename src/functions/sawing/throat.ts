import { feet, inches, optional, sameForAll } from "../../cells/read";
import { spread } from "../../cells/spread";
import { biggestLogIn, throatFitIn } from "../../math/sawing/throat-fit";

/**
 * Inches to spare between the mill's opening and a log as it turns; minus when it will not pass.
 *
 * Measure the log over its knots, flare and bark where it is thickest. The sweep is the gap between the log and a
 * string stretched along its hollow side.
 *
 * @customfunction THROATFIT
 * @param throat Clear opening of the mill between posts, and under the beam. A bare number is inches.
 * @param small Diameter of the small end. A bare number is inches.
 * @param large Diameter of the large end. A bare number is inches.
 * @param length Length of the log, which limits the sweep that can be. A bare number is feet.
 * @param [sweep] Largest gap under a string along the hollow side. A bare number is inches; none when left out.
 * @param [clearance] Room to keep, both sides together. A bare number is inches; none when left out.
 * @returns Inches to spare
 * @example =BOLE.THROATFIT(40, 16, 20, 12, 2) gives 18.875
 * @example =BOLE.THROATFIT(30, 28, 33, 10) gives -3
 * @example =BOLE.THROATFIT(30, 33, 28, 10) gives #N/A
 * @caution A log that is let down into a mill it does not pass can jam or roll: measure the log again on the deck.
 * @words will it fit, too big, capacity, opening
 * @see BIGGESTLOG
 * @picture throat, sweep
 */
export function THROATFIT(
  throat: unknown[][],
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  sweep?: unknown[][],
  clearance?: unknown[][],
): unknown[][] {
  return spread(
    {
      throatIn: sameForAll(inches(throat, "throat")),
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      sweepIn: optional(inches(sweep, "sweep"), 0),
      clearanceIn: optional(inches(clearance, "clearance"), 0),
    },
    throatFitIn,
  );
}

/**
 * Largest log diameter to take on for a mill's opening.
 *
 * A foot of room over the biggest log is customary (common practice, no source): for knots, flare and turning.
 *
 * @customfunction BIGGESTLOG
 * @param throat Clear opening of the mill. A bare number is inches.
 * @param [clearance] Room to keep over the log. A bare number is inches; 12 when left out or 0.
 * @returns Inches
 * @example =BOLE.BIGGESTLOG(84) gives 72
 * @example =BOLE.BIGGESTLOG(10) gives #N/A
 * @words maximum diameter, capacity, how big a log
 * @see THROATFIT
 * @picture throat
 */
export function BIGGESTLOG(throat: unknown[][], clearance?: unknown[][]): unknown[][] {
  return spread(
    { throatIn: inches(throat, "throat"), clearanceIn: optional(inches(clearance, "clearance")) },
    biggestLogIn,
  );
}
