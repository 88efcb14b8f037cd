import { dive } from "./dive";
import { fillInTurn, fillSet, unsettled, type Effort } from "./fill-set";
import { ruleOf, searchSets, type SetRule } from "./log-sets";
import { better, foundOf, leftAfter, SAME_TOTAL, shortOf, type Found } from "./order-found";
import type { PlansMet } from "./price-search";
import type { Yard } from "./weigh";

/** The best plans found, and the total that no plan can pass. */
export interface Searched {
  yard: Yard;
  found: Found;
  bound: number;
}

/** How far a search has come: work done as a share of its most, and the best total so far. */
export interface Progress {
  share: number;
  found: Found;
}

/** Faces that may be weighed for an order; a small one ends long before. */
export const MOST_WORK = 15_000_000;

/** Sets of logs looked at for what one to three logs gave. */
const SET_STEPS = 1000;

/** Takes one to three logs out of the best plan and fills what they gave from cheaper ones. */
export function* improve(
  yard: Yard,
  searched: Searched,
  wanted: Float64Array,
  plans: PlansMet,
  rules: readonly SetRule[],
  effort: Effort,
): Generator<Progress, Searched, void> {
  let { found } = searched;
  let failed = 0;
  for (let turn = 0; failed < MOST_FAILED && yard.work.done < MOST_WORK; turn++) {
    if (found.total <= searched.bound + SAME_TOTAL) break;
    const next = refilled(yard, found, turn, wanted, plans, rules, effort);
    const gained = next.total < found.total - SAME_TOTAL;
    failed = gained ? 0 : failed + 1;
    if (gained) found = next;
    yield { share: Math.min(1, yard.work.done / MOST_WORK), found };
  }
  return { ...searched, found };
}

const MOST_FAILED = 60;
const MOST_REFILLS = 6;

/** What pieces are worth where any of them may come out short. */
function shortPrices({ job }: Yard): Float64Array {
  return Float64Array.from(
    job.pieces,
    ({ boardFeet, count }) => boardFeet * (count < Infinity ? job.shortPrice : job.stockPrice),
  );
}

/** Which logs to take out in a turn: each alone, then pairs, then threes, going round. */
function takenOut({ plans }: Found, turn: number): number[] {
  const count = plans.length;
  if (count === 0) return [];
  const size = Math.min(count, 1 + (Math.floor(turn / count) % 3));
  const step = 1 + (Math.floor(turn / (3 * count)) % Math.max(1, count - 1));
  return [...new Set(Array.from({ length: size }, (_, i) => (turn + i * step) % count))];
}

function refilled(
  yard: Yard,
  found: Found,
  turn: number,
  wanted: Float64Array,
  plans: PlansMet,
  rules: readonly SetRule[],
  effort: Effort,
): Found {
  const { logs } = yard.job;
  const out = takenOut(found, turn);
  const kept = found.plans.filter((_, at) => !out.includes(at));
  const left = kept.reduce(leftAfter, wanted);
  const used = new Set(kept.map(({ log }) => log));
  const free = [...logs.keys()].filter((log) => !used.has(log));
  const takes = logs.map(({ takes }) => takes);
  const keptTotal = foundOf(yard, kept, wanted).total - yard.job.shortPrice * shortOf(yard, left);
  let best = found;
  const together = (more: Found) => foundOf(yard, [...kept, ...more.plans], wanted);
  if (found.shortBoardFeet > 0) {
    const more = turn % 4 === 0 ? dive(yard, free, left, plans, effort) : undefined;
    const prices = unsettled(shortPrices(yard), turn);
    return better(best, together(more ?? fillInTurn(yard, free, left, prices, effort.ways)));
  }
  const leftRules = rules.flatMap((rule) => ruleOf(rule.priced, left, takes) ?? []);
  const sets = searchSets(free, takes, leftRules, SET_STEPS);
  for (let tried = 0; tried < MOST_REFILLS; tried++) {
    const set = sets.next(best.total - keptTotal - SAME_TOTAL);
    if (!set) break;
    best = better(best, together(fillSet(yard, set.logs, left, plans, effort)));
  }
  return best;
}
