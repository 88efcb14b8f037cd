import { NoAnswer } from "../errors";

/** Refuses a target that the air cannot bring the wood to, and says what it can. */
export function mustDryTo({ fromPct, toPct, emcPct }: { fromPct: number; toPct: number; emcPct: number }): void {
  if (!(fromPct > toPct)) throw new NoAnswer(`from (% moisture): wanted more than the target ${toPct}, got ${fromPct}`);
  if (!(toPct > emcPct))
    throw new NoAnswer(`target (% moisture): this air dries wood to ${emcPct.toFixed(1)} and no further, got ${toPct}`);
}
