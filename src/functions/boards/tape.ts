import { anyNumber, count, inches, mayBeNegative, named, oneOf, optional, zeroCounts } from "../../cells/read";
import { spread } from "../../cells/spread";
import { inUnit } from "../../math/boards/to-unit";
import { TRADE_UNITS } from "../../math/unit-kinds";
import { LENGTH_UNITS, lengthInUnit } from "../../math/boards/length-in-unit";
import { feetInchesText, fractionText } from "./tape-text";

/**
 * Inches as a fraction for the tape, such as 24-1/2.
 *
 * To the nearest fraction, in lowest terms. The answer is text; keep the number for sums.
 *
 * @customfunction FRACTION
 * @returns Text
 * @example =BOLE.FRACTION(24.5) gives "24-1/2"
 * @example =BOLE.FRACTION(0.8, 8) gives "3/4"
 * @example =BOLE.FRACTION(24.5, 1.5) gives #VALUE!
 * @words sixteenths, eighths, tape measure, decimal to fraction, ruler
 * @see FEETINCHES
 */
export const FRACTION = spread(
  {
    /** Length. It may be below 0. */
    lengthIn: named("inches", mayBeNegative(inches)),
    /** Finest fraction: 16 for sixteenths. */
    denominator: optional(count, 16),
  },
  fractionText,
);

/**
 * Inches as feet and inches for the tape, such as 8'-6 1/2".
 *
 * To the nearest fraction, in lowest terms; 11.999 in is a foot. Bole reads the text back where a length is asked.
 *
 * @customfunction FEETINCHES
 * @returns Text
 * @example =BOLE.FEETINCHES(102.5) gives "8'-6 1/2"""
 * @example =BOLE.FEETINCHES(11.999) gives "1'-0"""
 * @example =BOLE.FEETINCHES("long") gives #VALUE!
 * @words tape measure, feet and inches, sixteenths, carpenter
 * @see FRACTION
 */
export const FEETINCHES = spread(
  {
    /** Length. It may be below 0. */
    lengthIn: named("inches", mayBeNegative(inches)),
    /** Finest fraction: 16 for sixteenths. */
    denominator: optional(count, 16),
  },
  feetInchesText,
);

/**
 * A length as Bole reads it, in the unit asked for.
 *
 * It reads as a diameter, width or thickness is read: a bare number is inches, whatever unit the answer is in. A dash
 * between feet and inches only parts them: 4'-7 1/4" is 55.25 in. Without their marks, 8-6 is 8 ft 6 in only where a log
 * or board length is asked; a diameter or width has no such thing, so it is refused there and here: write 8'6".
 *
 * @customfunction MEASURE
 * @returns Length in that unit
 * @example =BOLE.MEASURE("2'-4 1/2""") gives 28.5
 * @example =BOLE.MEASURE("5'-6 3/4""", "ft") gives 5.5625
 * @example =BOLE.MEASURE("45 cm", "mm") gives 450
 * @example =BOLE.MEASURE("8-6") gives #VALUE!
 * @example =BOLE.MEASURE("1,5") gives #VALUE!
 * @words convert, metric, inches to millimetres, feet and inches to decimal, units
 * @see FEETINCHES
 */
export const MEASURE = spread(
  {
    /** Length as typed: 14 1/2, 5/4, 8'6", 45 cm. */
    lengthIn: named("text", inches),
    /** Unit of the answer. */
    unit: optional(oneOf(LENGTH_UNITS), "in"),
  },
  lengthInUnit,
);

/** Each unit with its other spellings. */
const UNIT_WORDS = Object.fromEntries(Object.entries(TRADE_UNITS).map(([name, { also }]) => [name, also]));

/**
 * An amount in another unit of the trade, or a price by the unit.
 *
 * Lengths, areas, wood, weights, speeds, forces, stresses, powers and temperatures, each into units of its own kind. A price
 * is asked as "per board feet", "per m3", "/kg": of a thousand board feet it is less a foot. Board feet here are wood as it
 * is measured, a twelfth of a cubic foot; a cord or stere is a stack with its air, of which 0.7 counts as wood, so a cord
 * is 3.6246 steres and 89.6 cubic feet of wood. A ton is not taken, for there are two: write t or short ton.
 *
 * @customfunction TOUNIT
 * @returns The amount in that unit
 * @example =BOLE.TOUNIT(1, "thousand board feet", "m3") gives 2.359737
 * @example =BOLE.TOUNIT(850, "per thousand board feet", "per m3") gives 360.2096
 * @example =BOLE.TOUNIT(5, "hp", "kW") gives 3.728499
 * @example =BOLE.TOUNIT(100, "kg", "m") gives #N/A
 * @example =BOLE.TOUNIT(100, "ton", "kg") gives #VALUE!
 * @words convert, conversion, metric, units, cubic meters to board feet, kilograms to pounds, price per cubic meter, hoppus, cord, stere
 * @see MEASURE
 */
export const TOUNIT = spread(
  {
    /** Amount, or price for one such unit. It may be below 0. */
    amount: zeroCounts(mayBeNegative(anyNumber)),
    /** Unit that the amount is in. */
    from: oneOf(UNIT_WORDS),
    /** Unit of the answer. */
    to: oneOf(UNIT_WORDS),
  },
  inUnit,
);
