import { inches, logLength, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { BRERETON_UNITS, breretonVolume } from "../../math/logs/brereton";
import { CUBIC_UNITS } from "../../math/logs/cubic-unit";
import { gostCubicMeters } from "../../math/logs/gost";
import { hoppusVolume } from "../../math/logs/hoppus";
import { jasCubicMeters } from "../../math/logs/jas";

/**
 * Volume of a log by its quarter girth, in hoppus feet unless another unit is asked for.
 *
 * @customfunction HOPPUS
 * @returns Volume in the unit asked for
 * @example =BOLE.HOPPUS(48, 16) gives 16
 * @example =BOLE.HOPPUS(48, 16, "ft3") gives 20.37
 * @example =BOLE.HOPPUS(2000, 16) gives #N/A
 * @words quarter girth, hoppus foot, tape round a log
 * @see GIRTHDIAMETER
 * @picture girth
 */
export const HOPPUS = spread(
  {
    /** Girth at mid-length, by tape down to the quarter inch. */
    girthIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** hoppus ft, ft3, m3, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3). */
    unit: optional(oneOf(CUBIC_UNITS), "hoppus ft"),
  },
  hoppusVolume,
);

/**
 * Export volume of a log by Brereton: the whole cylinder of the mean end diameter, in board feet.
 *
 * With rounding "customs" the sizes are cut as the Japanese customs cut them: the mean diameter down to even centimeters,
 * the length less 0.1 m and down to an even tenth of a meter, the volume to 0.001 m3. That the diameter goes down, and not
 * to the nearest, is from memory.
 *
 * @customfunction BRERETON
 * @returns Volume in the unit asked for; board feet when none is
 * @example =BOLE.BRERETON(23, 25, 16) gives 603.19
 * @example =BOLE.BRERETON("60 cm", "60 cm", "12.1 m", "m3", "customs") gives 3.393
 * @example =BOLE.BRERETON(25, 23, 16) gives #N/A
 * @words export logs, tropical logs, cylinder board feet
 * @picture log, diameters
 */
export const BRERETON = spread(
  {
    /** Small-end diameter, the mean of the longest and shortest. */
    smallIn: inches,
    /** Large-end diameter, the mean of the longest and shortest. */
    largeIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Unit of the answer. */
    unit: optional(oneOf(BRERETON_UNITS), "board feet"),
    /** none (the sizes as given) or customs (cut as the Japanese customs do). */
    rounding: optional(oneOf({ none: ["exact"], customs: ["Japanese customs"] }), "none"),
  },
  breretonVolume,
);

/**
 * Cubic meters in a log by the Japanese agricultural standard, with its own rounding.
 *
 * @customfunction JAS
 * @returns Cubic meters, to three decimals
 * @example =BOLE.JAS("30 cm", "4 m") gives 0.360
 * @example =BOLE.JAS("30 cm", "7.6 m") gives 0.754
 * @example =BOLE.JAS("0.5 cm", "4 m") gives #N/A
 * @words Japanese log scale, export logs, cubic meters
 * @picture diameters
 */
export const JAS = spread(
  {
    /** Shortest small-end diameter inside bark. */
    diameterIn: inches,
    /** Log length. */
    lengthFt: logLength,
  },
  jasCubicMeters,
);

/**
 * Cubic meters in a log by the table of GOST 2708-75, from its top diameter under bark.
 *
 * The table was seen in three reprints: 10 to 38 cm, most rows by half meters from 1 to 9 or 11 m. Diameters are taken down to
 * the printed class, lengths down to tenths of a meter; between printed lengths a straight line. Two reprints differ on
 * 36 cm by 9 m (1.18 and 1.13), so from 8.6 to 9.9 m at 36 cm there is no answer.
 *
 * @customfunction GOST
 * @returns Cubic meters
 * @example =BOLE.GOST("24 cm", "6 m") gives 0.33
 * @example =BOLE.GOST("24 cm", "6.2 m") gives 0.34
 * @example =BOLE.GOST("36 cm", "9 m") gives #N/A
 * @words Russian log table, cubic meters
 * @picture log-trim
 */
export const GOST = spread(
  {
    /** Top diameter under bark. */
    diameterIn: inches,
    /** Log length. */
    lengthFt: logLength,
  },
  gostCubicMeters,
);
