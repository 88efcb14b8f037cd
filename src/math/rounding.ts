/** Sizes that came from metric or from feet and inches miss a round number by the last binary digits: so much is forgiven. */
export const SLIP = 1e-7;

/** Floors of the cut plan forgive this share of a unit, so that 6 in measured as 5.9999999 is 6. */
export const SLACK = 1e-6;

/** Sizes and sums nearer than this are the same: what parts them is the accident of binary. */
export const NEAR = 1e-9;
/** Added to what Math.ceil may leave as minus nought. */
const NOUGHT = 0;

/** Down to a whole multiple of a step. */
export function downTo(step: number, value: number): number {
  return Math.floor(value / step + SLIP) * step;
}

/** Up to a whole multiple of a step. */
export function upTo(step: number, value: number): number {
  return Math.ceil(value / step - SLIP) * step + NOUGHT;
}

/** To the nearest multiple of a step, an exact half up. */
export function nearest(step: number, value: number): number {
  return Math.floor(value / step + 0.5 + SLIP) * step;
}

/** To the nearest multiple of a step, an exact half down. */
export function nearestHalfDown(step: number, value: number): number {
  return Math.ceil(value / step - 0.5 - SLIP) * step + NOUGHT;
}

/** To a number of decimals, an exact half up. */
export function toDecimals(decimals: number, value: number): number {
  return nearest(1, value * 10 ** decimals) / 10 ** decimals;
}

/** What a sum in a sheet may miss a number by, as a share of it: 14.1 + 0.2 comes out a little under 14.3. */
const SUM_SLIP = 1e-12;

/** A lower limit that is itself a figure of the sheet, a hair lower: a sum that should meet it does. */
export function hairUnder(limit: number): number {
  return limit * (1 - SUM_SLIP);
}

/** An upper limit that is itself a figure of the sheet, a hair higher: a sum that should meet it does. */
export function hairOver(limit: number): number {
  return limit * (1 + SUM_SLIP);
}
