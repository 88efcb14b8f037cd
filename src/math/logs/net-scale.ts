import { apart, mustBeBetween, NoAnswer, short } from "../errors";
import { hairOver } from "../rounding";

/** No pile scales more board feet than this; what does is a slip of the finger. */
const LARGEST_BF = 1e9;
/** No scale stick shows less. */
const SMALLEST_SCALE_BF = 1;

/**
 * Net scale of a log or a load: the gross scale less its deductions.
 *
 * @formula net = max(0, gross - sum(off)); off = deductions * gross if deductions < 1, else deductions [board feet];
 *   gross = grossBf
 * @source plain arithmetic
 * @range deductions together not over the gross; 1 has no answer, since it may be one board foot or a cell of 100 %
 */
export function netScaleBoardFeet({ grossBf, deductions }: { grossBf: number; deductions: readonly number[] }): number {
  mustBeBetween(0, LARGEST_BF, grossBf, "gross scale (bf)");
  let off = 0;
  for (const deduction of deductions) {
    mustBeBetween(0, LARGEST_BF, deduction, "deduction (bf, or a share under 1)");
    if (deduction === 1)
      throw new NoAnswer(
        "deduction (bf, or a share under 1): wanted less or more than 1, got 1, which may be one board foot or 100 %; for a log lost whole give its gross scale, and take one board foot off the gross",
      );
    off += deduction < 1 ? deduction * grossBf : deduction;
  }
  if (off > hairOver(grossBf))
    throw new NoAnswer(`deductions (bf): wanted 0 to ${short(grossBf)}, the gross scale, got ${apart(off, grossBf)}`);
  return Math.max(0, grossBf - off);
}

/**
 * Overrun: how far the lumber tally is over the log scale, in percent; minus when it is under.
 *
 * @formula overrun = 100 * (sawnBf - scaledBf) / scaledBf
 * @source Black Hills lumber recovery study, definition of overrun
 * @source Fahey and Martin 1975, recovery ratios of 145 and 123 %
 * @range scaled from 1 board foot
 * @checked 3 of 3 published figures (45 %, 23 %, -4.2 %)
 */
export function overrunPercent({ sawnBf, scaledBf }: { sawnBf: number; scaledBf: number }): number {
  mustBeBetween(0, LARGEST_BF, sawnBf, "sawn (bf)");
  mustBeBetween(SMALLEST_SCALE_BF, LARGEST_BF, scaledBf, "scaled (bf)");
  return (100 * (sawnBf - scaledBf)) / scaledBf;
}
