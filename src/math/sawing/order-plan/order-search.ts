import { dive } from "./dive";
import { fillSet, type Effort } from "./fill-set";
import { ruleOf, searchSets, type SetRule } from "./log-sets";
import { better, foundOf, SAME_TOTAL, wantedOf, type Found } from "./order-found";
import { improve, MOST_WORK, type Progress, type Searched } from "./order-improve";
import type { OrderJob } from "./order-job";
import { searchPrices, stockPrices, type Priced, type PlansMet } from "./price-search";
import { weighLog, worthsAt, yardOf, type Yard } from "./weigh";

/** The share of that for the search over sets of logs. */
const SETS_WORK = 0.35;
const SET_STEPS = 20_000;
const SETS_TRIED = 60;
/** Orders of so few lines are filled with more ways kept at every face. */
const FEW_LINES = 6;
const EFFORTS: { few: Effort; many: Effort } = {
  few: { ways: 8, tries: 4, unsettledTries: 6 },
  many: { ways: 1, tries: 4, unsettledTries: 0 },
};

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
  const set = yield* trySets(yard, { found, bound: wholeLogs(job, root.bound), yard }, wanted, plans, rules, effort);
  found = yield* tryRicherSets(yard, set, wanted, plans, rules, effort);
  return yield* improve(yard, { ...set, found }, wanted, plans, rules, effort);
}

/** Logs that all take the same are sawn in whole numbers, and so is their bound. */
function wholeLogs({ logs, pieces }: OrderJob, bound: number): number {
  const one = logs[0]!.takes;
  const alike = logs.every(({ takes }) => takes === one) && pieces.every(({ count }) => count < Infinity);
  return alike ? one * Math.ceil(bound / one - SAME_TOTAL) : bound;
}

/** By how much more than the order sets of logs are to be good for, so that they can be filled without much search. */
const RICHER = [0.12, 0.08, 0.06, 0.04, 0.03];
const RICHER_SETS = 3;
const RICHER_WORK = 0.7;

/** The cheapest sets of logs that would be good for a little more than the order. */
function* tryRicherSets(
  yard: Yard,
  { found: first, bound }: Searched,
  wanted: Float64Array,
  plans: PlansMet,
  rules: readonly SetRule[],
  effort: Effort,
): Generator<Progress, Found, void> {
  const { logs } = yard.job;
  const takes = logs.map(({ takes }) => takes);
  let found = first;
  for (const more of RICHER) {
    const richer = wanted.map((count) => count * (1 + more));
    const richerRules = rules.flatMap(({ priced }) => ruleOf(priced, richer, takes) ?? []);
    const sets = searchSets([...logs.keys()], takes, richerRules, SET_STEPS / 10);
    for (let tried = 0; tried < RICHER_SETS; tried++) {
      const set = sets.next(found.total - SAME_TOTAL);
      if (!set || found.total <= bound + SAME_TOTAL || yard.work.done > RICHER_WORK * MOST_WORK) break;
      const filled = fillSet(yard, set.logs, wanted, plans, effort);
      found = better(found, filled);
      yield { share: yard.work.done / MOST_WORK, found };
    }
  }
  return found;
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
    if (open < Infinity && effort === EFFORTS.many) break;
    yield { share: yard.work.done / MOST_WORK, found };
  }
  const proved = Math.min(open, sets.least(), found.total);
  return { yard, found, bound: Math.max(bound, proved) };
}

function pricedForAll(yard: Yard, { prices, worth }: Priced): Priced {
  const worths = worthsAt(yard, prices);
  return { prices, worth: worth.map((one, log) => (Number.isNaN(one) ? weighLog(yard, worths, log).worth : one)) };
}
