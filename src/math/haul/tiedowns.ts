import { mustBeAbove } from "../errors";
import { NEAR } from "../rounding";

/**
 * Tie-downs for one article on a truck or trailer, by its weight and by its length, whichever asks for more.
 *
 * Each runs from one side of the vehicle over the load to the other side; one that is fastened to the load or comes
 * back to its own side counts for half its limit. The load is not blocked against moving forward.
 *
 * @formula n = max(byWeight, byLength); byWeight = up(weightLb / 2 / limitLb);
 *   byLength = 1 if lengthFt <= 5 and weightLb <= 1100, 2 if lengthFt <= 5, else 2 + max(0, up((lengthFt - 10) / 10))
 * @source 49 CFR 393.106: together a working load limit of at least half the weight
 * @source 49 CFR 393.110: the count by length
 * @range loads under the general rule; logs lengthwise between stakes have section 393.116 of their own
 * @checked 4 of 4 printed counts by length
 */
export function tiedownCount({ weightLb, lengthFt, limitLb }: Tiedowns): number {
  mustBeAbove(0, limitLb, "working load limit of one tie-down (lb)");
  const byWeight = roundedUp((weightLb * SHARE_HELD) / limitLb);
  return Math.max(byWeight, countByLength(weightLb, lengthFt));
}

interface Tiedowns {
  weightLb: number;
  lengthFt: number;
  limitLb: number;
}

/** 49 CFR 393.106: the aggregate working load limit is at least this share of the weight. */
const SHARE_HELD = 1 / 2;

/** 49 CFR 393.110, an article that nothing blocks from moving forward. */
function countByLength(weightLb: number, lengthFt: number): number {
  if (lengthFt <= 5) return weightLb <= 1100 ? 1 : 2;
  return 2 + Math.max(0, roundedUp((lengthFt - 10) / 10));
}

/** The next whole number up; a hair over one, from a metric weight in the last binary digit, is that one. */
function roundedUp(count: number): number {
  return Math.ceil(count - NEAR);
}
