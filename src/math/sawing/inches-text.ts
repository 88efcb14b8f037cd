/** Finer than this a tape and a saw-head scale are not read. */
const FINEST_FRACTION = 64;

/** A size as it is read off a tape: 14-3/4; a size that is no whole 64th in three decimals. */
export function inchesText(sizeIn: number): string {
  const parts = Math.round(Math.abs(sizeIn) * FINEST_FRACTION);
  if (Math.abs(Math.abs(sizeIn) * FINEST_FRACTION - parts) > 1e-6) return String(Number(sizeIn.toFixed(3)));
  const whole = Math.floor(parts / FINEST_FRACTION);
  let top = parts % FINEST_FRACTION;
  let bottom = FINEST_FRACTION;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const sign = sizeIn < 0 && parts > 0 ? "-" : "";
  if (top === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${top}/${bottom}` : `${sign}${whole}-${top}/${bottom}`;
}

/** A thickness by the trade's name: 5/4 for 1 1/4 in; one that is no whole quarter in inches. */
export function quartersText(thicknessIn: number): string {
  const quarters = thicknessIn * 4;
  return Number.isInteger(quarters) ? `${quarters}/4` : `${inchesText(thicknessIn)} in`;
}
