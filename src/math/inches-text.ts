import { tapeInches } from "./boards/tape-length";
import { SLIP } from "./rounding";

/** Finer than this a tape and a saw-head scale are not read. */
const FINEST_FRACTION = 64;

/** A size as a message says it, as it is read off a tape: 14-3/4; a size that is no whole 64th in three decimals. */
export function inchesText(sizeIn: number): string {
  const parts = Math.abs(sizeIn) * FINEST_FRACTION;
  if (Math.abs(parts - Math.round(parts)) > SLIP) return String(Number(sizeIn.toFixed(3)));
  const { negative, whole, top, bottom } = tapeInches({ lengthIn: sizeIn, denominator: FINEST_FRACTION });
  const sign = negative ? "-" : "";
  if (top === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${top}/${bottom}` : `${sign}${whole}-${top}/${bottom}`;
}

/** A thickness by the trade's name: 5/4 for 1 1/4 in; one that is no whole quarter in inches. */
export function quartersText(thicknessIn: number): string {
  const quarters = thicknessIn * 4;
  return Number.isInteger(quarters) ? `${quarters}/4` : `${inchesText(thicknessIn)} in`;
}
