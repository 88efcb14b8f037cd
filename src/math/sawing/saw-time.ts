import { mustBeAbove, mustBeAtLeast } from "../errors";

/**
 * Minutes at the mill: every cut takes the log's length at the feed speed, and the handling between cuts.
 *
 * @formula minutes = cuts * (lengthFt / feedFpm + handlingMin)
 * @source plain arithmetic
 * @range feed above 0; cuts, length and handling from 0
 */
export function sawMinutes(run: { cuts: number; lengthFt: number; feedFpm: number; handlingMin: number }): number {
  mustBeAtLeast(0, run.cuts, "cuts");
  mustBeAtLeast(0, run.lengthFt, "length (ft)");
  mustBeAbove(0, run.feedFpm, "feed (ft/min)");
  mustBeAtLeast(0, run.handlingMin, "handling (min a cut)");
  return run.cuts * (run.lengthFt / run.feedFpm + run.handlingMin);
}
