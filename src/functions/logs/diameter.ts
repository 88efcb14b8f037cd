import { feet, inches, list, mayBeZero, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { DIAMETER_ROUNDINGS, diameterAtIn, girthDiameterIn, scalingDiameterIn } from "../../math/logs/scaling-diameter";

/**
 * Scaling diameter from two or more readings across one end of a log.
 *
 * Who rounds how: to the nearest inch, Georgia, Vermont and Wengert; exact halves shared out, once up and once down, Georgia
 * and Wengert (alternate "nearest up" and "nearest"); halves dropped, the Idaho contest rules; always down, a Montana lecture.
 *
 * @customfunction SCALEDIAMETER
 * @param diameters The readings, a range. A bare number is inches.
 * @param [rounding] none (default), nearest (an exact half dropped), nearest up (an exact half counted) or down.
 * @returns Inches
 * @example =BOLE.SCALEDIAMETER({8;13}, "nearest") gives 10
 * @example =BOLE.SCALEDIAMETER({19;20.5}) gives 19.75
 * @example =BOLE.SCALEDIAMETER({8;-13}) gives #VALUE!
 * @words average diameter, oval log, two diameters
 * @picture diameters
 */
export function SCALEDIAMETER(diameters: unknown[][], rounding?: unknown[][]): unknown[][] {
  return spread(
    {
      diametersIn: list(inches(diameters, "diameters")),
      rounding: optional(oneOf(DIAMETER_ROUNDINGS, rounding, "rounding")),
    },
    scalingDiameterIn,
  );
}

/**
 * Diameter inside bark from a tape round the log and the thickness of its bark.
 *
 * @customfunction GIRTHDIAMETER
 * @param girth Girth over bark. A bare number is inches.
 * @param [bark] Thickness of the bark on one side; 0 when left out. A bare number is inches.
 * @returns Inches
 * @example =BOLE.GIRTHDIAMETER(75.4, 0.5) gives 23.00
 * @example =BOLE.GIRTHDIAMETER(75.4) gives 24.00
 * @example =BOLE.GIRTHDIAMETER(12, 2) gives #N/A
 * @words circumference, tape round a tree, bark thickness
 * @picture girth
 */
export function GIRTHDIAMETER(girth: unknown[][], bark?: unknown[][]): unknown[][] {
  return spread({ girthIn: inches(girth, "girth"), barkIn: mayBeZero(inches(bark, "bark")) }, girthDiameterIn);
}

/**
 * Diameter of a log at a distance from its small end, by straight taper.
 *
 * @customfunction DIAMETERAT
 * @param small Small-end diameter. A bare number is inches.
 * @param large Large-end diameter. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param distance Distance from the small end. A bare number is feet; 0 or a blank is the small end itself.
 * @returns Inches
 * @example =BOLE.DIAMETERAT(16, 20, 16, 8) gives 18
 * @example =BOLE.DIAMETERAT(16, 20, 16, 17) gives #N/A
 * @words taper, diameter along a log, where to buck
 * @picture taper
 */
export function DIAMETERAT(
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  distance: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      distanceFt: mayBeZero(feet(distance, "distance")),
    },
    diameterAtIn,
  );
}
