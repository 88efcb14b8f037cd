const DAY_ZERO = Date.UTC(1899, 11, 30);
const MS_PER_DAY = 86_400_000;

/** A time as spreadsheets count it: days and their fractions from 30 December 1899. */
export function serialOf(at: Date): number {
  return (at.getTime() - DAY_ZERO) / MS_PER_DAY;
}
