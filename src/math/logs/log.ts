import { mustBeBetween, NoAnswer } from "../errors";

/** A log as a log rule sees it: one diameter and the length. */
export interface Log {
  diameterIn: number;
  lengthFt: number;
}

/** No tree is thicker or taller (common practice, no source): what is, is a slip of the finger. */
export const THICKEST_IN = 300;
export const LONGEST_FT = 300;

/** Refuses what a rule cannot scale, and says both limits. */
export function mustBeALog(
  { diameterIn, lengthFt }: Log,
  rule: string,
  smallestIn: number,
  longestFt = LONGEST_FT,
): void {
  mustBeBetween(smallestIn, THICKEST_IN, diameterIn, `${rule} diameter (in)`);
  if (!(lengthFt > 0 && lengthFt <= longestFt))
    throw new NoAnswer(`${rule} length (ft): wanted more than 0, up to ${longestFt}, got ${lengthFt}`);
}
