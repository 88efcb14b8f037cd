import { lengthInUnit } from "../../math/boards/length-in-unit";
import { inchesText } from "../../math/inches-text";
import { LENGTHS, unitWords } from "../../math/units";

/** The units that a saw head's scale is read in. */
export const HEIGHT_UNITS = unitWords(LENGTHS, "in", "mm");

export type HeightUnit = keyof typeof HEIGHT_UNITS;

/** A height in the unit of the scale. */
export function heightIn(unit: HeightUnit, lengthIn: number): number {
  return unit === "in" ? lengthIn : lengthInUnit({ lengthIn, unit });
}

/** A height as it is read off the scale: 14-3/4 in inches, 374.65 in millimetres. */
export function heightText(unit: HeightUnit, lengthIn: number): string {
  return unit === "in" ? inchesText(lengthIn) : String(Number(heightIn(unit, lengthIn).toFixed(2)));
}
