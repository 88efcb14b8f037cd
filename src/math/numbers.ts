/** The sums and means that more than one formula needs. */

export function sum(values: readonly number[]): number {
  return sumOf(values, (value) => value);
}

export function sumOf<T>(things: readonly T[], of: (thing: T) => number): number {
  return things.reduce((total, thing) => total + of(thing), 0);
}

export function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}

export function squaresAboutMean(values: readonly number[]): number {
  const middle = mean(values);
  return sumOf(values, (value) => (value - middle) ** 2);
}

/** The standard deviation of a sample. */
export function deviation(values: readonly number[]): number {
  return Math.sqrt(squaresAboutMean(values) / (values.length - 1));
}

/**
 * The two neighbouring numbers between which a search turns from too low to high enough, by halving until no number lies
 * between them.
 */
export function turnBetween(low: number, high: number, isTooLow: (x: number) => boolean): [low: number, high: number] {
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return [low, high];
    if (isTooLow(middle)) low = middle;
    else high = middle;
  }
}

/** A straight line through points, and what its spread is reckoned from. */
export interface FittedLine {
  slope: number;
  meanX: number;
  meanY: number;
  /** Of the x about their mean. */
  squaresOfX: number;
}

/** The line of least squares. */
export function fittedLine(x: readonly number[], y: readonly number[]): FittedLine {
  const [meanX, meanY] = [mean(x), mean(y)];
  const squaresOfX = squaresAboutMean(x);
  const products = sum(x.map((value, i) => (value - meanX) * (y[i]! - meanY)));
  return { slope: products / squaresOfX, meanX, meanY, squaresOfX };
}
