import { CM_PER_IN, M_PER_FT } from "../units";
import { toDecimals } from "../rounding";

/** Metric sizes come through inches and feet and back; this many decimals make 30 cm 30 again. */
const DECIMALS = 6;

/** Centimeters, freed of the last binary digits of the way through inches. */
export function centimeters(inches: number): number {
  return toDecimals(DECIMALS, inches * CM_PER_IN);
}

/** Meters, freed of the last binary digits of the way through feet. */
export function meters(feet: number): number {
  return toDecimals(DECIMALS, feet * M_PER_FT);
}
