import { IN_PER_FT } from "../../units";
import type { CutJob } from "./cut-job";

/** The length that gives most, and what it gives; -1 where none gives anything. */
export interface Best {
  i: number;
  worth: number;
}

/** What an inch of width is worth in a piece of each length, longest first: board feet, where a board foot counts 1. */
export type PerInch = readonly number[];

/** For each product, what an inch of width is worth in each length. */
export function perInchOf({ products, lengthsFt }: CutJob): PerInch[] {
  return products.map(({ tallyIn }) => lengthsFt.map((lengthFt) => (tallyIn / IN_PER_FT) * lengthFt));
}

/** The best of all lengths; a shorter one only when it is worth more. */
export function bestOfAll(perInch: PerInch, widthIn: (i: number) => number): Best {
  const best: Best = { i: -1, worth: 0 };
  for (let i = 0; i < perInch.length; i++) weigh(best, i, perInch[i]! * widthIn(i));
  return best;
}

/**
 * How wide the best boards of a product are in the i-th length, times their price, in a place that two numbers say. They
 * are handed on one by one because a log is weighed in thousands of places: an object or a function for each would be
 * most of the work.
 */
export type WidthAt = (product: number, a: number, b: number, i: number) => number;

/**
 * The same where a shorter piece is never narrower. Then no length between two gives more than the one after the longer of
 * them would at the shorter one's width, and most lengths need not be weighed.
 */
export function bestWhereShorterIsWider(
  perInch: PerInch,
  widthAt: WidthAt,
  product: number,
  a: number,
  b: number,
): Best {
  const best: Best = { i: -1, worth: 0 };
  const last = perInch.length - 1;
  if (last < 0) return best;
  const ofShortest = widthAt(product, a, b, last);
  if (ofShortest <= 0) return best;
  weigh(best, 0, perInch[0]! * (last === 0 ? ofShortest : widthAt(product, a, b, 0)));
  weigh(best, last, perInch[last]! * ofShortest);
  weighBetween(best, perInch, widthAt, product, a, b, 0, last, ofShortest);
  return best;
}

function weighBetween(
  best: Best,
  perInch: PerInch,
  widthAt: WidthAt,
  product: number,
  a: number,
  b: number,
  longer: number,
  shorter: number,
  ofShorter: number,
): void {
  if (shorter - longer < 2) return;
  const ceiling = perInch[longer + 1]! * ofShorter;
  if (ceiling < best.worth || (ceiling === best.worth && best.i <= longer)) return;
  const middle = (longer + shorter) >> 1;
  const ofMiddle = widthAt(product, a, b, middle);
  weigh(best, middle, perInch[middle]! * ofMiddle);
  weighBetween(best, perInch, widthAt, product, a, b, longer, middle, ofMiddle);
  weighBetween(best, perInch, widthAt, product, a, b, middle, shorter, ofShorter);
}

function weigh(best: Best, i: number, worth: number): void {
  if (worth <= 0 || worth < best.worth || (worth === best.worth && i >= best.i)) return;
  best.i = i;
  best.worth = worth;
}
