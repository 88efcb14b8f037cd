import { CM_PER_IN, IN_PER_FT, M_PER_IN, MM_PER_IN } from "../units";

/** Units a length is shown in, and other names for them. */
export const LENGTH_UNITS = {
  in: ["inch", "inches"],
  ft: ["foot", "feet"],
  mm: ["millimetre", "millimetres", "millimeter", "millimeters"],
  cm: ["centimetre", "centimetres", "centimeter", "centimeters"],
  m: ["metre", "metres", "meter", "meters"],
} as const;

type LengthUnit = keyof typeof LENGTH_UNITS;

const PER_INCH: Record<LengthUnit, number> = { in: 1, ft: 1 / IN_PER_FT, mm: MM_PER_IN, cm: CM_PER_IN, m: M_PER_IN };

/** A length is kept to 1e-9 in; these decimals show all of it, and 45 cm as 45 again. */
const DECIMALS: Record<LengthUnit, number> = { in: 9, ft: 10, mm: 7, cm: 8, m: 10 };

/**
 * A length in the unit asked for.
 *
 * @formula inches times the unit's size; 25.4 mm to the inch exactly
 * @source plain arithmetic
 * @checked 4 of 4 lengths that people asked about in feet, inches and fractions, two of them answered wrong where they were asked
 */
export function lengthInUnit({ lengthIn, unit }: { lengthIn: number; unit: LengthUnit }): number {
  return Number((lengthIn * PER_INCH[unit]).toFixed(DECIMALS[unit]));
}
