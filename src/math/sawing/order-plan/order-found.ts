import type { LogPlan } from "./fill-log";
import { stockWorth } from "./price-search";
import type { Yard } from "./weigh";

/** Plans of some logs, what they leave wanted, and the total that is to be least. */
export interface Found {
  plans: readonly LogPlan[];
  left: Float64Array;
  shortBoardFeet: number;
  total: number;
}

/** What is ordered of each piece; no end of stock. */
export function wantedOf({ job }: Yard): Float64Array {
  return Float64Array.from(job.pieces, ({ count }) => count);
}

/** What is still wanted after a plan. */
export function leftAfter(wanted: Float64Array, { counts }: Pick<LogPlan, "counts">): Float64Array {
  return wanted.map((count, piece) => count - counts[piece]!);
}

/** Board feet that are wanted by the order. */
export function shortOf({ job }: Yard, left: Float64Array): number {
  let short = 0;
  left.forEach((count, piece) => (short += count < Infinity ? Math.max(0, count) * job.pieces[piece]!.boardFeet : 0));
  return short;
}

/** Plans put together, and what they come to for what was wanted. A log that gives nothing is not sawn. */
export function foundOf(yard: Yard, plans: readonly LogPlan[], wanted: Float64Array): Found {
  const used = plans.filter(({ flitches }) => flitches.length > 0);
  const left = used.reduce(leftAfter, wanted);
  const shortBoardFeet = shortOf(yard, left);
  const takes = used.reduce((sum, { log, counts }) => sum + yard.job.logs[log]!.takes - stockWorth(yard, counts), 0);
  return { plans: used, left, shortBoardFeet, total: takes + yard.job.shortPrice * shortBoardFeet };
}

/** Totals nearer than this are one. */
export const SAME_TOTAL = 1e-6;

/** The better of two: the lesser total, and of the same the fewer logs, then the fewer passes. */
export function better(a: Found, b: Found): Found {
  if (Math.abs(a.total - b.total) > SAME_TOTAL) return a.total < b.total ? a : b;
  if (a.plans.length !== b.plans.length) return a.plans.length < b.plans.length ? a : b;
  return passesOf(b) < passesOf(a) ? b : a;
}

function passesOf({ plans }: Found): number {
  return plans.reduce((sum, { flitches }) => sum + flitches.length, 0);
}
