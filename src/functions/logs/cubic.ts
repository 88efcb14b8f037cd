import { inches, logLength, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { coneVolume, huberVolume, newtonVolume, smalianVolume } from "../../math/logs/cubic";
import { CUBIC_UNITS } from "../../math/logs/cubic-unit";

/** A log measured at both ends. */
const BOTH_ENDS = {
  /** Small-end diameter inside bark. */
  smallIn: inches,
  /** Large-end diameter inside bark, not under the small end. */
  largeIn: inches,
  /** Log length. */
  lengthFt: logLength,
  /** ft3, m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3). */
  unit: optional(oneOf(CUBIC_UNITS), "ft3"),
};

/**
 * Volume of a log from both ends, by Smalian's formula.
 *
 * It overstates a log with a flared butt: take the large end above the flare, or use HUBER or NEWTON.
 *
 * @customfunction SMALIAN
 * @returns Volume in the unit asked for
 * @example =BOLE.SMALIAN(12, 16, 16) gives 17.453
 * @example =BOLE.SMALIAN("12 cm", "20 cm", "6 m", "m3") gives 0.128
 * @example =BOLE.SMALIAN(16, 12, 16) gives #N/A
 * @words cubic feet in a log, log volume, cubic scale
 * @see HUBER
 * @picture log
 */
export const SMALIAN = spread(BOTH_ENDS, smalianVolume);

/**
 * Volume of a log from the diameter at mid-length, by Huber's formula.
 *
 * @customfunction HUBER
 * @returns Volume in the unit asked for
 * @example =BOLE.HUBER(14, 16) gives 17.104
 * @example =BOLE.HUBER("40 cm", "10 m", "m3") gives 1.257
 * @example =BOLE.HUBER(400, 16) gives #N/A
 * @words cubic feet in a log, log volume, mid diameter
 * @see SMALIAN
 * @picture log
 */
export const HUBER = spread(
  {
    /** Diameter inside bark at mid-length. */
    middleIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** ft3, m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3). */
    unit: optional(oneOf(CUBIC_UNITS), "ft3"),
  },
  huberVolume,
);

/**
 * Volume of a log from both ends and the middle, by Newton's formula.
 *
 * @customfunction NEWTON
 * @returns Volume in the unit asked for
 * @example =BOLE.NEWTON(12, 14, 16, 16) gives 17.221
 * @example =BOLE.NEWTON(12, 18, 16, 16) gives #N/A
 * @words cubic feet in a log, log volume, exact volume
 * @see SMALIAN
 * @picture log
 */
export const NEWTON = spread(
  {
    /** Small-end diameter inside bark. */
    smallIn: inches,
    /** Diameter inside bark at mid-length, between the ends. */
    middleIn: inches,
    /** Large-end diameter inside bark. */
    largeIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** ft3, m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3). */
    unit: optional(oneOf(CUBIC_UNITS), "ft3"),
  },
  newtonVolume,
);

/**
 * Volume of a log as a cone with its tip cut off, from both ends.
 *
 * @customfunction CONEVOLUME
 * @returns Volume in the unit asked for
 * @example =BOLE.CONEVOLUME(12, 16, 16) gives 17.221
 * @example =BOLE.CONEVOLUME(16, 12, 16) gives #N/A
 * @words cubic feet in a log, frustum, taper
 * @see SMALIAN
 * @picture log
 */
export const CONEVOLUME = spread(BOTH_ENDS, coneVolume);
