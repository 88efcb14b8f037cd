import { count, inches, mayBeNegative, named, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
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
