import { count as wholeNumber, inches, inches as readInches, mayBeNegative, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { LENGTH_UNITS, lengthInUnit } from "../../math/boards/length-in-unit";
import { feetInchesText, fractionText } from "../../math/boards/tape-text";

/**
 * Inches as a fraction for the tape, such as 24-1/2.
 *
 * To the nearest fraction, in lowest terms. The answer is text; keep the number for sums.
 *
 * @customfunction FRACTION
 * @param inches Length. A bare number is inches; it may be below 0.
 * @param [denominator] Finest fraction: 16 for sixteenths, which is used when left out.
 * @returns Text
 * @example =BOLE.FRACTION(24.5) gives "24-1/2"
 * @example =BOLE.FRACTION(0.8, 8) gives "3/4"
 * @example =BOLE.FRACTION(24.5, 1.5) gives #VALUE!
 * @words sixteenths, eighths, tape measure, decimal to fraction, ruler
 * @see FEETINCHES
 */
export function FRACTION(inches: unknown[][], denominator?: unknown[][]): unknown[][] {
  return spread(
    {
      lengthIn: mayBeNegative(readInches(inches, "inches")),
      denominator: optional(wholeNumber(denominator, "denominator"), 16),
    },
    fractionText,
  );
}

/**
 * Inches as feet and inches for the tape, such as 8'-6 1/2".
 *
 * To the nearest fraction, in lowest terms; 11.999 in is a foot. Bole reads the text back where a length is asked.
 *
 * @customfunction FEETINCHES
 * @param inches Length. A bare number is inches; it may be below 0.
 * @param [denominator] Finest fraction: 16 for sixteenths, which is used when left out.
 * @returns Text
 * @example =BOLE.FEETINCHES(102.5) gives "8'-6 1/2"""
 * @example =BOLE.FEETINCHES(11.999) gives "1'-0"""
 * @example =BOLE.FEETINCHES("long") gives #VALUE!
 * @words tape measure, feet and inches, sixteenths, carpenter
 * @see FRACTION
 */
export function FEETINCHES(inches: unknown[][], denominator?: unknown[][]): unknown[][] {
  return spread(
    {
      lengthIn: mayBeNegative(readInches(inches, "inches")),
      denominator: optional(wholeNumber(denominator, "denominator"), 16),
    },
    feetInchesText,
  );
}

/**
 * A length as Bole reads it, in the unit asked for.
 *
 * It reads as a diameter, width or thickness is read: a bare number is inches, whatever unit the answer is in. A dash
 * between feet and inches only parts them: 4'-7 1/4" is 55.25 in. Without their marks, 8-6 is 8 ft 6 in only where a log
 * or board length is asked; a diameter or width has no such thing, so it is refused there and here: write 8'6".
 *
 * @customfunction MEASURE
 * @param text Length as typed: 14 1/2, 5/4, 8'6", 45 cm. A bare number is inches.
 * @param [unit] Unit of the answer: in (when left out), ft, mm, cm or m.
 * @returns Length in that unit
 * @example =BOLE.MEASURE("2'-4 1/2""") gives 28.5
 * @example =BOLE.MEASURE("5'-6 3/4""", "ft") gives 5.5625
 * @example =BOLE.MEASURE("45 cm", "mm") gives 450
 * @example =BOLE.MEASURE("8-6") gives #VALUE!
 * @example =BOLE.MEASURE("1,5") gives #VALUE!
 * @words convert, metric, inches to millimetres, feet and inches to decimal, units
 * @see FEETINCHES
 */
export function MEASURE(text: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    { lengthIn: inches(text, "text"), unit: optional(oneOf(LENGTH_UNITS, unit, "unit"), "in") },
    lengthInUnit,
  );
}
