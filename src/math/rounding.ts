/** Sizes that came from metric or from feet and inches miss a round number by the last binary digits: so much is forgiven. */
const SLIP = 1e-7;
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
