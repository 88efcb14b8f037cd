import { apart, NoAnswer, short } from "../errors";

/** Refuses a target that the air cannot bring the wood to, and says what it can. */
export function mustDryTo({
  fromPercent,
  toPercent,
  emcPercent,
}: {
  fromPercent: number;
  toPercent: number;
  emcPercent: number;
}): void {
  if (!(fromPercent > toPercent))
    throw new NoAnswer(
      `from (% moisture): wanted more than the target ${short(toPercent)}, got ${apart(fromPercent, toPercent)}`,
    );
  if (!(toPercent > emcPercent))
    throw new NoAnswer(
      `target (% moisture): this air dries wood to ${emcPercent.toFixed(1)} and no further, got ${apart(toPercent, emcPercent)}`,
    );
}
