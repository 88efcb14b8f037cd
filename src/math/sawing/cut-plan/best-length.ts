/** The length that gives most, and what it gives; -1 where none gives anything. */
export interface Best {
  i: number;
  worth: number;
}

/** The best of all lengths, longest first; a shorter one only when it is worth more. */
export function bestOfAll(lengthsFt: readonly number[], perFoot: (i: number) => number): Best {
  const best: Best = { i: -1, worth: 0 };
  for (let i = 0; i < lengthsFt.length; i++) weigh(best, i, lengthsFt[i]! * perFoot(i));
  return best;
}

/**
 * What a foot of length is worth in a piece of the i-th length of a product, in a place that two numbers say. They are
 * handed on one by one because a log is weighed in thousands of places: an object or a function for each would be most of
 * the work.
 */
export type PerFoot = (product: number, a: number, b: number, i: number) => number;

/**
 * The same where a shorter piece is never narrower, and so never worth less to the foot. Then no length between two gives
 * more than the one after the longer of them would at the shorter one's worth, and most lengths need not be weighed.
 */
export function bestWhereShorterIsWider(
  lengthsFt: readonly number[],
  perFoot: PerFoot,
  product: number,
  a: number,
  b: number,
): Best {
  const best: Best = { i: -1, worth: 0 };
  const last = lengthsFt.length - 1;
  if (last < 0) return best;
  const ofShortest = perFoot(product, a, b, last);
  if (ofShortest <= 0) return best;
  weigh(best, 0, lengthsFt[0]! * (last === 0 ? ofShortest : perFoot(product, a, b, 0)));
  weigh(best, last, lengthsFt[last]! * ofShortest);
  weighBetween(best, lengthsFt, perFoot, product, a, b, 0, last, ofShortest);
  return best;
}

function weighBetween(
  best: Best,
  lengthsFt: readonly number[],
  perFoot: PerFoot,
  product: number,
  a: number,
  b: number,
  longer: number,
  shorter: number,
  ofShorter: number,
): void {
  if (shorter - longer < 2) return;
  const ceiling = lengthsFt[longer + 1]! * ofShorter;
  if (ceiling < best.worth || (ceiling === best.worth && best.i <= longer)) return;
  const middle = (longer + shorter) >> 1;
  const ofMiddle = perFoot(product, a, b, middle);
  weigh(best, middle, lengthsFt[middle]! * ofMiddle);
  weighBetween(best, lengthsFt, perFoot, product, a, b, longer, middle, ofMiddle);
  weighBetween(best, lengthsFt, perFoot, product, a, b, middle, shorter, ofShorter);
}

function weigh(best: Best, i: number, worth: number): void {
  if (worth <= 0 || worth < best.worth || (worth === best.worth && i >= best.i)) return;
  best.i = i;
  best.worth = worth;
}
