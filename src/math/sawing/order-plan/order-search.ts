import { dive } from "./dive";
import { fillSet, type Effort } from "./fill-set";
import { ruleOf, searchSets, type SetRule } from "./log-sets";
import { better, foundOf, leftAfter, SAME_TOTAL, shortOf, wantedOf, type Found } from "./order-found";
import type { OrderJob } from "./order-job";
import { searchPrices, stockPrices, type Priced, type PlansMet } from "./price-search";
import { weighLog, worthsAt, yardOf, type Yard } from "./weigh";

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
const MOST_WORK = 60_000_000;
/** The share of that for the search over sets of logs. */
const SETS_WORK = 0.35;
const SET_STEPS = 20_000;
const SETS_TRIED = 60;
/** Orders of so few lines are filled with more ways kept at every face. */
const FEW_LINES = 6;
const EFFORTS: { few: Effort; many: Effort } = { few: { ways: 6, tries: 4 }, many: { ways: 1, tries: 4 } };

/** Searches for the plan of the least total. It hands over how far it is, so that a host can show it, and stop it. */
export function* searchOrder(job: OrderJob): Generator<Progress, Searched, void> {
  const yard = yardOf(job);
  const wanted = wantedOf(yard);
  const nothing = foundOf(yard, [], wanted);
  if (job.logs.length === 0) return { yard, found: nothing, bound: nothing.total };
  const logs = job.logs.map((_, log) => log);
  const takes = job.logs.map(({ takes }) => takes);
  const plans: PlansMet = logs.map(() => []);
  const effort = job.pieces.length <= FEW_LINES ? EFFORTS.few : EFFORTS.many;
  const root = searchPrices(yard, { logs, takes, wanted }, plans);
  let found = better(dive(yard, logs, wanted, plans, effort), nothing);
  const progress = (): Progress => ({ share: Math.min(1, yard.work.done / MOST_WORK), found });
  yield progress();

  const all = takes.reduce((sum, one) => sum + one, 0);
  const rules = root.met.flatMap((priced) => ruleOf(priced, wanted, takes) ?? []);
  if (root.bound > all + SAME_TOTAL) {
    found = better(found, fillSet(yard, logs, wanted, plans, { ...effort, tries: 3 * effort.tries }));
    yield progress();
    return yield* improve(yard, { found, bound: root.bound, yard }, wanted, plans, rules, effort);
  }
  const set = yield* trySets(yard, { found, bound: root.bound, yard }, wanted, plans, rules, effort);
  return yield* improve(yard, set, wanted, plans, rules, effort);
}

/** Sets of logs, cheapest first: those that a price forbids teach a rule, the others are filled. */
function* trySets(
  yard: Yard,
  { found, bound }: Searched,
  wanted: Float64Array,
  plans: PlansMet,
  rules: SetRule[],
  effort: Effort,
): Generator<Progress, Searched, void> {
  const { logs } = yard.job;
  const stock = worthsAt(yard, stockPrices(yard));
  const takes = logs.map((log, at) => log.takes - weighLog(yard, stock, at).worth);
  const sets = searchSets([...logs.keys()], takes, rules, SET_STEPS);
  let open = Infinity;
  for (let tried = 0; tried < SETS_TRIED && yard.work.done < SETS_WORK * MOST_WORK;) {
    const set = sets.next(found.total - SAME_TOTAL);
    if (!set) break;
    const test = searchPrices(
      yard,
      { logs: set.logs, takes: set.logs.map(() => 0), wanted, enough: SAME_TOTAL },
      plans,
    );
    if (test.bound > SAME_TOTAL) {
      const rule = ruleOf(pricedForAll(yard, test.best), wanted, takes);
      if (rule) rules.push(rule);
      sets.addRule(rule);
      continue;
    }
    tried++;
    const filled = fillSet(yard, set.logs, wanted, plans, effort);
    found = better(found, filled);
    if (filled.shortBoardFeet > 0 || filled.total > set.takes + SAME_TOTAL) open = Math.min(open, set.takes);
    yield { share: yard.work.done / MOST_WORK, found };
  }
  const proved = Math.min(open, sets.least(), found.total);
  return { yard, found, bound: Math.max(bound, proved) };
}

function pricedForAll(yard: Yard, { prices, worth }: Priced): Priced {
  const worths = worthsAt(yard, prices);
  return { prices, worth: worth.map((one, log) => (Number.isNaN(one) ? weighLog(yard, worths, log).worth : one)) };
}

/** Takes one to three logs out of the best plan and fills what they gave from cheaper ones. */
function* improve(
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
    const out = takenOut(found, turn);
    if (out.length === 0) break;
    const next = refilled(yard, found, out, wanted, plans, rules, effort);
    const gained = next.total < found.total - SAME_TOTAL;
    failed = gained ? 0 : failed + 1;
    if (gained) found = next;
    yield { share: Math.min(1, yard.work.done / MOST_WORK), found };
  }
  return { ...searched, found };
}

const MOST_FAILED = 60;
const MOST_REFILLS = 6;

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
  out: readonly number[],
  wanted: Float64Array,
  plans: PlansMet,
  rules: readonly SetRule[],
  effort: Effort,
): Found {
  const { logs } = yard.job;
  const kept = found.plans.filter((_, at) => !out.includes(at));
  const left = kept.reduce(leftAfter, wanted);
  const used = new Set(kept.map(({ log }) => log));
  const free = [...logs.keys()].filter((log) => !used.has(log));
  const takes = logs.map(({ takes }) => takes);
  const keptTotal = foundOf(yard, kept, wanted).total - yard.job.shortPrice * shortOf(yard, left);
  let best = found;
  const together = (more: Found) => foundOf(yard, [...kept, ...more.plans], wanted);
  if (found.shortBoardFeet > 0) return better(best, together(dive(yard, free, left, plans, effort)));
  const leftRules = rules.flatMap((rule) => ruleOf(rule.priced, left, takes) ?? []);
  const sets = searchSets(free, takes, leftRules, SET_STEPS / 20);
  for (let tried = 0; tried < MOST_REFILLS; tried++) {
    const set = sets.next(best.total - keptTotal - SAME_TOTAL);
    if (!set) break;
    best = better(best, together(fillSet(yard, set.logs, left, plans, effort)));
  }
  return best;
}
