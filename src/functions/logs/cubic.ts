import { feet, inches, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { coneVolume, huberVolume, newtonVolume, smalianVolume } from "../../math/logs/cubic";
import { CUBIC_UNITS } from "../../math/logs/cubic-unit";

/**
 * Volume of a log from both ends, by Smalian's formula.
 *
 * It overstates a log with a flared butt: take the large end above the flare, or use HUBER or NEWTON.
 *
 * @customfunction SMALIAN
 * @param small Small-end diameter inside bark. A bare number is inches.
 * @param large Large-end diameter inside bark, not under the small end. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.SMALIAN(12, 16, 16) gives 17.453
 * @example =BOLE.SMALIAN("12 cm", "20 cm", "6 m", "m3") gives 0.128
 * @example =BOLE.SMALIAN(16, 12, 16) gives #N/A
 * @words cubic feet in a log, log volume, cubic scale
 * @see HUBER
 * @picture log
 */
export function SMALIAN(small: unknown[][], large: unknown[][], length: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    smalianVolume,
  );
}

/**
 * Volume of a log from the diameter at mid-length, by Huber's formula.
 *
 * @customfunction HUBER
 * @param middle Diameter inside bark at mid-length. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.HUBER(14, 16) gives 17.104
 * @example =BOLE.HUBER("40 cm", "10 m", "m3") gives 1.257
 * @example =BOLE.HUBER(400, 16) gives #N/A
 * @words cubic feet in a log, log volume, mid diameter
 * @see SMALIAN
 * @picture log
 */
export function HUBER(middle: unknown[][], length: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    {
      middleIn: inches(middle, "middle"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    huberVolume,
  );
}

/**
 * Volume of a log from both ends and the middle, by Newton's formula.
 *
 * @customfunction NEWTON
 * @param small Small-end diameter inside bark. A bare number is inches.
 * @param middle Diameter inside bark at mid-length, between the ends. A bare number is inches.
 * @param large Large-end diameter inside bark. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.NEWTON(12, 14, 16, 16) gives 17.221
 * @example =BOLE.NEWTON(12, 18, 16, 16) gives #N/A
 * @words cubic feet in a log, log volume, exact volume
 * @see SMALIAN
 * @picture log
 */
export function NEWTON(
  small: unknown[][],
  middle: unknown[][],
  large: unknown[][],
  length: unknown[][],
  unit?: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      middleIn: inches(middle, "middle"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    newtonVolume,
  );
}

/**
 * Volume of a log as a cone with its tip cut off, from both ends.
 *
 * @customfunction CONEVOLUME
 * @param small Small-end diameter inside bark. A bare number is inches.
 * @param large Large-end diameter inside bark, not under the small end. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.CONEVOLUME(12, 16, 16) gives 17.221
 * @example =BOLE.CONEVOLUME(16, 12, 16) gives #N/A
 * @words cubic feet in a log, frustum, taper
 * @see SMALIAN
 * @picture log
 */
export function CONEVOLUME(
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  unit?: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    coneVolume,
  );
}
