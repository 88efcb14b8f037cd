/*
 * A second sawyer: the same definitions worked by trying everything, with no table of best stacks, no early end of a
 * search and no code of the planner. Slow; for small logs only.
 */
import { cantWorth } from "./brute-force/cant";
import { quarterWorth } from "./brute-force/quarter";
import { sawyerOf, type Sawyer } from "./brute-force/sawyer";
import { bowedWorth, liveWorth, slabWorth } from "./brute-force/through";
import { timberWorth } from "./brute-force/timber";
import type { SmallLog } from "./small-logs";

const WORTH: Record<SmallLog["pattern"], (log: SmallLog, sawyer: Sawyer) => number> = {
  live: (log, sawyer) => (log.sweep > 0 ? bowedWorth(log, sawyer) : liveWorth(log, sawyer)),
  slab: slabWorth,
  cant: cantWorth,
  quarter: quarterWorth,
  timber: timberWorth,
};

/** The greatest worth of any plan of a small log. */
export const bruteForce = (log: SmallLog): number => WORTH[log.pattern](log, sawyerOf(log));
