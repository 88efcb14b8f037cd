import { linearProgramme } from "./linear-programme";
import { weighLog, worthsAt, type Yard, type Yielded } from "./weigh";

/** Prices of all pieces, and what every log asked about is worth at them. */
export interface Priced {
  prices: Float64Array;
  /** By log of the yard; NaN where the log was not asked about. */
  worth: Float64Array;
}

/** What the linear programme of a search for prices came to. */
export interface PriceSearch {
  /** The prices with the highest bound, and those that came last. */
  best: Priced;
  bound: number;
  /** Every vector of prices that was met. */
  met: Priced[];
  /** How much of each log the programme saws; 0 for logs not asked about. */
  shares: Float64Array;
}

/** What is to be priced: these logs, what each takes, and how many of each piece are wanted of them. */
export interface PriceTask {
  logs: readonly number[];
  takes: readonly number[];
  wanted: Float64Array;
  /** Stop when the bound is above this. */
  enough?: number;
}

/** Plans met so far, log by log: later searches begin with them. */
export type PlansMet = Yielded["counts"][][];

/** The share of the best prices in those that are tried next: it keeps the search from swinging. */
const BLEND = 0.6;
const MOST_ROUNDS = 60;
const PLANS_KEPT = 40;
/** A gain under this share of the bound is none. */
const NO_GAIN = 1e-9;

/**
 * Prices at which the wanted pieces pay for the logs, by column generation: the linear programme chooses among plans, the
 * exact plan of each log at its prices is the next column. Any prices from 0 to the price of a short give a bound.
 *
 * @formula bound = sum of price * wanted - sum over logs of max(0, worth of the log - what it takes)
 */
export function searchPrices(yard: Yard, task: PriceTask, plans: PlansMet): PriceSearch {
  const { logs, takes, wanted, enough = Infinity } = task;
  const { job } = yard;
  const rows = job.pieces.flatMap(({ count }, piece) => (count < Infinity && wanted[piece]! > 0 ? [piece] : []));
  const ceilings = rows.map((piece) => job.shortPrice * job.pieces[piece]!.boardFeet);
  const programme = linearProgramme(
    [...rows.map((piece) => wanted[piece]!), ...logs.map(() => 1)],
    [...ceilings, ...logs.map(() => 0)],
  );
  const first = rows.length + logs.length;
  const owner: number[] = [];
  rows.forEach((_, row) => {
    programme.add({ cost: 0, rows: [row], figures: [-1] });
    owner.push(-1);
  });
  const addPlan = (at: number, counts: Float64Array) => {
    const filled = rows.flatMap((piece, row) => (counts[piece]! > 0 ? [row] : []));
    const figures = filled.map((row) => counts[rows[row]!]!);
    programme.add({
      cost: takes[at]! - stockWorth(yard, counts),
      rows: [...filled, rows.length + at],
      figures: [...figures, 1],
    });
    owner.push(at);
  };
  logs.forEach((log, at) => plans[log]!.forEach((counts) => addPlan(at, counts)));

  const pricesOf = (duals: Float64Array): Float64Array => {
    const prices = stockPrices(yard);
    rows.forEach((piece, row) => (prices[piece] = Math.min(ceilings[row]!, Math.max(0, duals[row]!))));
    return prices;
  };

  let best: Priced | undefined;
  let bound = -Infinity;
  const met: Priced[] = [];
  /** Weighs every log at some prices, and adds the plans that the programme would take. */
  const round = (prices: Float64Array, duals: Float64Array): number => {
    const worths = worthsAt(yard, prices);
    const worth = new Float64Array(job.logs.length).fill(NaN);
    let reached = rows.reduce((sum, piece) => sum + prices[piece]! * wanted[piece]!, 0);
    let added = 0;
    logs.forEach((log, at) => {
      const yielded = weighLog(yard, worths, log);
      worth[log] = yielded.worth;
      reached -= Math.max(0, yielded.worth - takes[at]!);
      if (!pays(yielded.counts, at, duals)) return;
      addPlan(at, yielded.counts);
      keep(plans[log]!, yielded.counts);
      added++;
    });
    const priced = { prices, worth };
    met.push(priced);
    if (reached > bound) {
      bound = reached;
      best = priced;
    }
    return added;
  };
  const pays = (counts: Float64Array, at: number, duals: Float64Array): boolean => {
    let reduced = takes[at]! - stockWorth(yard, counts) - duals[rows.length + at]!;
    rows.forEach((piece, row) => (reduced -= duals[row]! * counts[piece]!));
    return reduced < -1e-7;
  };

  for (let turn = 0; turn < MOST_ROUNDS && !(bound > enough); turn++) {
    const duals = programme.solve();
    const newest = pricesOf(duals);
    const blended = best && newest.map((price, piece) => BLEND * best!.prices[piece]! + (1 - BLEND) * price);
    const before = bound;
    if (blended && round(blended, duals) > 0) continue;
    if (round(newest, duals) === 0 && bound - before <= NO_GAIN * Math.abs(bound)) break;
  }
  const amounts = programme.amounts();
  const shares = new Float64Array(job.logs.length);
  owner.forEach((at, i) => at >= 0 && (shares[logs[at]!]! += amounts[first + i]!));
  return { best: best!, bound, met, shares };
}

/** Stock has one price, and no row. */
export function stockPrices({ job }: Yard): Float64Array {
  return Float64Array.from(job.pieces, ({ count, boardFeet }) => (count === Infinity ? job.stockPrice * boardFeet : 0));
}

/** What the stock of a plan counts. */
export function stockWorth({ job }: Yard, counts: Float64Array): number {
  return job.pieces.reduce(
    (sum, { count, boardFeet }, piece) => sum + (count === Infinity ? job.stockPrice * boardFeet * counts[piece]! : 0),
    0,
  );
}

function keep(plans: Float64Array[], counts: Float64Array): void {
  plans.push(counts);
  if (plans.length > PLANS_KEPT) plans.shift();
}

