import { mustBeBetween, NoAnswer } from "../errors";
import { IN_PER_FT } from "../units";

/** Beyond this no tape reaches and a number no longer holds sixteenths, in inches. */
const LONGEST_IN = 1e9;
/** The finest fraction worth writing. */
const FINEST = 10_000;

/**
 * Inches as a fraction for the tape: 24-1/2.
 *
 * @formula the nearest whole number of 1/denominator in, in lowest terms; a half goes away from zero
 * @source plain arithmetic
 * @range up to 1e9 in either way; denominator a whole number from 1 to 10,000
 */
export function fractionText({ lengthIn, denominator }: { lengthIn: number; denominator: number }): string {
  const parts = nearestParts(lengthIn, denominator);
  return minusWhen(parts < 0) + inchText(Math.abs(parts), denominator, "-");
}

/**
 * Inches as feet and inches for the tape: 8'-6 1/2".
 *
 * @formula the nearest whole number of 1/denominator in, in feet, inches and lowest terms; a half goes away from zero
 * @source plain arithmetic
 * @range up to 1e9 in either way; denominator a whole number from 1 to 10,000
 */
export function feetInchesText({ lengthIn, denominator }: { lengthIn: number; denominator: number }): string {
  const parts = nearestParts(lengthIn, denominator);
  const partsPerFoot = IN_PER_FT * denominator;
  const feet = Math.floor(Math.abs(parts) / partsPerFoot);
  const inches = inchText(Math.abs(parts) % partsPerFoot, denominator, " ");
  return `${minusWhen(parts < 0)}${feet}'-${inches.includes("/") && !inches.includes(" ") ? "0 " : ""}${inches}"`;
}

/** Rounding the whole length at once lets it carry: 11.999 in becomes a foot, never 11-16/16. */
function nearestParts(lengthIn: number, denominator: number): number {
  mustBeBetween(-LONGEST_IN, LONGEST_IN, lengthIn, "length (in)");
  mustBeBetween(1, FINEST, denominator, "denominator");
  if (!Number.isInteger(denominator)) throw new NoAnswer(`denominator: wanted a whole number, got ${denominator}`);
  return Math.sign(lengthIn) * Math.round(Math.abs(lengthIn) * denominator);
}

function inchText(parts: number, denominator: number, between: string): string {
  const whole = Math.floor(parts / denominator);
  const top = parts % denominator;
  if (top === 0) return `${whole}`;
  const shared = greatestCommonDivisor(top, denominator);
  return `${whole > 0 ? `${whole}${between}` : ""}${top / shared}/${denominator / shared}`;
}

function minusWhen(negative: boolean): string {
  return negative ? "-" : "";
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
