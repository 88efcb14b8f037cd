import { inchesText } from "../../math/inches-text";
import { MM_PER_IN } from "../../math/units";

/** The units that a saw head's scale is read in, with their other spellings. */
export const HEIGHT_UNITS = {
  in: ["inch", "inches"],
  mm: ["millimetre", "millimetres", "millimeter", "millimeters"],
};

export type HeightUnit = keyof typeof HEIGHT_UNITS;

/** Digits of a millimetre that are kept: what stands behind them is the accident of binary. */
const MM_DIGITS = 9;

/** A height in the unit of the scale. */
export function heightIn(unit: HeightUnit, inches: number): number {
  return unit === "in" ? inches : Number((inches * MM_PER_IN).toFixed(MM_DIGITS));
}

/** A height as it is read off the scale: 14-3/4 in inches, 374.65 in millimetres. */
export function heightText(unit: HeightUnit, inches: number): string {
  return unit === "in" ? inchesText(inches) : String(Number((inches * MM_PER_IN).toFixed(2)));
}
