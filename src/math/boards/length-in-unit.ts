import { LENGTHS, unitWords } from "../units";

/** The units a length is shown in. */
export const LENGTH_UNITS = unitWords(LENGTHS, "in", "ft", "mm", "cm", "m");

type LengthUnit = keyof typeof LENGTH_UNITS;

/** A length is kept to 1e-9 in; these decimals show all of it, and 45 cm as 45 again. */
const DECIMALS: Record<LengthUnit, number> = { in: 9, ft: 10, mm: 7, cm: 8, m: 10 };

/**
 * A length in the unit asked for.
 *
 * @formula L = decimals(lengthIn, 9) if unit = "in", decimals(lengthIn / 12, 10) if unit = "ft", decimals(lengthIn *
 *   25.4, 7) if unit = "mm", decimals(lengthIn * 2.54, 8) if unit = "cm", else decimals(lengthIn * 0.0254, 10)
 * @source plain arithmetic
 * @checked 4 of 4 lengths that people asked about in feet, inches and fractions, two of them answered wrong where they were asked
 */
export function lengthInUnit({ lengthIn, unit }: { lengthIn: number; unit: LengthUnit }): number {
  return Number((lengthIn / LENGTHS[unit].holds).toFixed(DECIMALS[unit]));
}
