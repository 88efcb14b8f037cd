import { mustBeBetween, NoAnswer } from "../errors";
import { IN_PER_FT } from "../units";

/** Beyond this no tape reaches and a number no longer holds sixteenths, in inches. */
const LONGEST_IN = 1e9;
/** The finest fraction worth writing. */
const FINEST = 10_000;

/** A length as it is read off a tape: whole inches, and a fraction of an inch in lowest terms, whose top may be 0. */
export interface TapeLength {
  negative: boolean;
  whole: number;
  top: number;
  bottom: number;
}

/**
 * Inches as a fraction for the tape: 24 and 1/2.
 *
 * @formula in words: the nearest whole number of 1/denominator in, in lowest terms, a half away from zero
 * @source plain arithmetic
 * @range up to 1e9 in either way; denominator a whole number from 1 to 10,000
 */
export function tapeInches({ lengthIn, denominator }: { lengthIn: number; denominator: number }): TapeLength {
  const parts = nearestParts(lengthIn, denominator);
  return { negative: parts < 0, ...inLowestTerms(Math.abs(parts), denominator) };
}

/**
 * Inches as feet and inches for the tape: 8 ft, 6 and 1/2.
 *
 * @formula in words: the nearest whole number of 1/denominator in, in feet, inches and lowest terms, a half away from
 *   zero
 * @source plain arithmetic
 * @range up to 1e9 in either way; denominator a whole number from 1 to 10,000
 */
export function tapeFeet({
  lengthIn,
  denominator,
}: {
  lengthIn: number;
  denominator: number;
}): TapeLength & { feet: number } {
  const parts = nearestParts(lengthIn, denominator);
  const partsPerFoot = IN_PER_FT * denominator;
  const feet = Math.floor(Math.abs(parts) / partsPerFoot);
  return { negative: parts < 0, feet, ...inLowestTerms(Math.abs(parts) % partsPerFoot, denominator) };
}

/** Rounding the whole length at once lets it carry: 11.999 in becomes a foot, never 11-16/16. */
function nearestParts(lengthIn: number, denominator: number): number {
  mustBeBetween(-LONGEST_IN, LONGEST_IN, lengthIn, "length (in)");
  mustBeBetween(1, FINEST, denominator, "denominator");
  if (!Number.isInteger(denominator)) throw new NoAnswer(`denominator: wanted a whole number, got ${denominator}`);
  return Math.sign(lengthIn) * Math.round(Math.abs(lengthIn) * denominator);
}

function inLowestTerms(parts: number, denominator: number): Omit<TapeLength, "negative"> {
  const top = parts % denominator;
  const shared = greatestCommonDivisor(top, denominator);
  return { whole: Math.floor(parts / denominator), top: top / shared, bottom: denominator / shared };
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
