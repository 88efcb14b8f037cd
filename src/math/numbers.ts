/** The small sums that more than one formula needs. */

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

export function sumOf<T>(things: readonly T[], of: (thing: T) => number): number {
  return things.reduce((total, thing) => total + of(thing), 0);
}

export function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}
