import type { Effort } from "./fill-set";
import { worthSomething } from "./fill-set";
import { fillLog, noFlitches, type LogPlan } from "./fill-log";
import { foundOf, leftAfter, shortOf, type Found } from "./order-found";
import { searchPrices, type PlansMet } from "./price-search";
import { worthsAt, type Yard } from "./weigh";

/** How many logs are filled to choose the next one of a dive, and to finish with one. */
const CHOICES = 3;
const LAST_CHOICES = 8;
/** Prices are rounded: a log worth this share of what is wanted may hold it all. */
const ALMOST = 0.98;

/**
 * One log after the other: prices for what is still wanted from the logs still lying there, then the log that gives most for
 * what it takes, then prices anew. The last log is the cheapest that holds all that is left.
 */
export function dive(
  yard: Yard,
  logs: readonly number[],
  wanted: Float64Array,
  plans: PlansMet,
  { ways }: Effort,
): Found {
  const { job } = yard;
  const chosen: LogPlan[] = [];
  let free = [...logs];
  let left = wanted;
  while (free.length > 0 && shortOf(yard, left) > 0) {
    const takes = free.map((log) => job.logs[log]!.takes);
    const { best, shares } = searchPrices(yard, { logs: free, takes, wanted: left }, plans);
    const prices = worthSomething(yard, best.prices);
    const worths = worthsAt(yard, prices);
    const known = noFlitches(yard);
    const fill = (log: number) => fillLog(yard, worths, log, left, ways, known);
    const needs = prices.reduce((sum, price, piece) => sum + (left[piece]! < Infinity ? price * left[piece]! : 0), 0);
    const last = free
      .filter((log) => best.worth[log]! >= ALMOST * needs)
      .sort((a, b) => job.logs[a]!.takes - job.logs[b]!.takes || a - b)
      .slice(0, LAST_CHOICES);
    const finish = firstOf(last, fill, (plan) => shortOf(yard, leftAfter(left, plan)) === 0);
    const next = finish ?? mostFor(yard, free, shares, fill);
    if (next.flitches.length === 0) break;
    chosen.push(next);
    left = leftAfter(left, next);
    free = free.filter((log) => log !== next.log);
  }
  return foundOf(yard, chosen, wanted);
}

function firstOf(logs: readonly number[], fill: (log: number) => LogPlan, isRight: (plan: LogPlan) => boolean) {
  for (const log of logs) {
    const plan = fill(log);
    if (isRight(plan)) return plan;
  }
  return undefined;
}

/** Of the logs that the programme saws most of, the one that gives most for what it takes. */
function mostFor(
  { job }: Yard,
  free: readonly number[],
  shares: Float64Array,
  fill: (log: number) => LogPlan,
): LogPlan {
  const likely = [...free].sort((a, b) => shares[b]! - shares[a]! || a - b).slice(0, CHOICES);
  const filled = likely.map(fill);
  return filled.reduce((best, plan) =>
    plan.worth / job.logs[plan.log]!.takes > best.worth / job.logs[best.log]!.takes ? plan : best,
  );
}
