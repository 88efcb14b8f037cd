import { fillLog, noFlitches, type LogPlan } from "./fill-log";
import { better, foundOf, leftAfter, shortOf, type Found } from "./order-found";
import { searchPrices, type PlansMet } from "./price-search";
import { weighLog, worthsAt, type Yard } from "./weigh";

/** How a set of logs is filled: ways kept at every face, and how often prices are raised to try again. */
export interface Effort {
  ways: number;
  tries: number;
  /** How often prices are moved a little, up and down, where raising them was not enough. */
  unsettledTries: number;
}

/** How much dearer a piece becomes that came out short. */
const RAISED = 1.3;
/** A piece that the prices make worth nothing is still worth this share of a short. */
const LEAST_SHARE = 1e-3;

/** Fills a set of logs one after the other, raises the price of what came out short, and fills them anew. */
export function fillSet(
  yard: Yard,
  logs: readonly number[],
  wanted: Float64Array,
  plans: PlansMet,
  { ways, tries, unsettledTries }: Effort,
): Found {
  const takes = logs.map((log) => yard.job.logs[log]!.takes);
  const { best } = searchPrices(yard, { logs, takes, wanted }, plans);
  let prices = worthSomething(yard, best.prices);
  let found = foundOf(yard, [], wanted);
  for (let turn = 0; turn < tries; turn++) {
    const next = fillInTurn(yard, logs, wanted, prices, ways);
    found = better(found, next);
    if (next.shortBoardFeet === 0) break;
    prices = prices.map((price, piece) =>
      wanted[piece]! < Infinity && next.left[piece]! > 0 ? price * RAISED : price,
    );
  }
  for (let turn = 0; turn < unsettledTries && found.shortBoardFeet > 0; turn++)
    found = better(found, fillInTurn(yard, logs, wanted, unsettled(prices, turn), ways));
  return found.shortBoardFeet === 0 ? found : mend(yard, found, logs, wanted, prices, ways);
}

/** Prices moved up and down a little, another way every turn, so that a log filled again is not filled the same. */
export function unsettled(prices: Float64Array, turn: number): Float64Array {
  return prices.map((price, piece) => price * (1 + (((turn * 7 + piece * (turn + 5)) % 11) - 5) / 25));
}

/** How often each log of a set is filled anew, for what it gave and what is still short, before the set is given up. */
const MENDING_ROUNDS = 4;
const RAISED_IN_MENDING = 1.2;

/** Fills one log after the other anew, for what it gave and what is short, and keeps what is no shorter than before. */
function mend(
  yard: Yard,
  found: Found,
  logs: readonly number[],
  wanted: Float64Array,
  firstPrices: Float64Array,
  ways: number,
): Found {
  let prices = firstPrices;
  let best = found;
  for (let turn = 0; turn < MENDING_ROUNDS * logs.length && best.shortBoardFeet > 0; turn++) {
    const log = logs[turn % logs.length]!;
    const others = best.plans.filter((plan) => plan.log !== log);
    const left = others.reduce(leftAfter, wanted);
    const plan = fillLog(yard, worthsAt(yard, prices), log, left, ways, noFlitches(yard));
    const next = foundOf(yard, [...others, plan], wanted);
    if (next.shortBoardFeet <= best.shortBoardFeet) best = next;
    prices = prices.map((price, piece) =>
      wanted[piece]! < Infinity && next.left[piece]! > 0 ? price * RAISED_IN_MENDING : price,
    );
  }
  return better(best, found);
}

/** Every piece that is ordered is worth at least a little, so that a log is not left for nothing. */
export function worthSomething({ job }: Yard, prices: Float64Array): Float64Array {
  const mean =
    job.pieces.reduce((sum, _, piece) => sum + prices[piece]!, 0) /
    job.pieces.reduce((sum, { boardFeet }) => sum + boardFeet, 0);
  return prices.map((price, piece) => {
    const { count, boardFeet } = job.pieces[piece]!;
    return count === Infinity ? price : Math.max(price, boardFeet * Math.max(mean * 0.05, LEAST_SHARE));
  });
}

/** The log of the most worth for what it takes first; each for what the ones before it left. */
export function fillInTurn(
  yard: Yard,
  logs: readonly number[],
  wanted: Float64Array,
  prices: Float64Array,
  ways: number,
): Found {
  const worths = worthsAt(yard, prices);
  const known = noFlitches(yard);
  const worth = new Map(logs.map((log) => [log, weighLog(yard, worths, log).worth]));
  const inTurn = [...logs].sort((a, b) => worth.get(b)! - worth.get(a)! || a - b);
  const plans: LogPlan[] = [];
  let left = wanted;
  for (const log of inTurn) {
    if (shortOf(yard, left) === 0) break;
    const plan = fillLog(yard, worths, log, left, ways, known);
    plans.push(plan);
    left = leftAfter(left, plan);
  }
  return foundOf(yard, plans, wanted);
}
