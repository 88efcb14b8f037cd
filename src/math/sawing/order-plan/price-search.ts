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
/** A plan that would gain less than this is not worth a column. */
const PAYS = 1e-7;

/**
 * Prices at which the wanted pieces pay for the logs, by column generation: the linear programme chooses among plans, the
 * exact plan of each log at its prices is the next column. Any prices from 0 to the price of a short give a bound.
 *
 * The bound is the sum of price * wanted less, for every log, what it is worth over what it takes.
 */
export function searchPrices(yard: Yard, task: PriceTask, plans: PlansMet): PriceSearch {
  const { logs, wanted, enough = Infinity } = task;
  const master = masterOf(yard, task);
  logs.forEach((log, at) => plans[log]!.forEach((counts) => master.add(at, counts)));
  const met: Priced[] = [];
  let best: Priced | undefined;
  let bound = -Infinity;
  /** Weighs every log at some prices, and adds the plans that the programme would take. */
  const round = (prices: Float64Array, duals: Float64Array): number => {
    const worths = worthsAt(yard, prices);
    const worth = new Float64Array(yard.job.logs.length).fill(NaN);
    let reached = master.rows.reduce((sum, piece) => sum + prices[piece]! * wanted[piece]!, 0);
    let added = 0;
    logs.forEach((log, at) => {
      const yielded = weighLog(yard, worths, log);
      worth[log] = yielded.worth;
      reached -= Math.max(0, yielded.worth - task.takes[at]!);
      if (!master.pays(at, yielded.counts, duals)) return;
      master.add(at, yielded.counts);
      keep(plans[log]!, yielded.counts);
      added++;
    });
    met.push({ prices, worth });
    if (reached > bound) {
      bound = reached;
      best = { prices, worth };
    }
    return added;
  };

  for (let turn = 0; turn < MOST_ROUNDS && !(bound > enough); turn++) {
    const duals = master.programme.solve();
    const newest = master.prices(duals);
    const blended = best && newest.map((price, piece) => BLEND * best!.prices[piece]! + (1 - BLEND) * price);
    const before = bound;
    if (blended && round(blended, duals) > 0) continue;
    if (round(newest, duals) === 0 && bound - before <= NO_GAIN * Math.abs(bound)) break;
  }
  return { best: best!, bound, met, shares: master.shares() };
}

/** The linear programme: a row a piece, with its short and what is over, then a row a log, of which one plan is taken. */
function masterOf(yard: Yard, { logs, takes, wanted }: PriceTask) {
  const { job } = yard;
  const rows = job.pieces.flatMap(({ count }, piece) => (count < Infinity && wanted[piece]! > 0 ? [piece] : []));
  const ceilings = rows.map((piece) => job.shortPrice * job.pieces[piece]!.boardFeet);
  const programme = linearProgramme(
    [...rows.map((piece) => wanted[piece]!), ...logs.map(() => 1)],
    [...ceilings, ...logs.map(() => 0)],
  );
  rows.forEach((_, row) => programme.add({ cost: 0, rows: [row], figures: [-1] }));
  const owners: { column: number; log: number }[] = [];
  return {
    programme,
    rows,
    add(at: number, counts: Float64Array): void {
      const filled = rows.flatMap((piece, row) => (counts[piece]! > 0 ? [row] : []));
      const column = programme.add({
        cost: takes[at]! - stockWorth(yard, counts),
        rows: [...filled, rows.length + at],
        figures: [...filled.map((row) => counts[rows[row]!]!), 1],
      });
      owners.push({ column, log: logs[at]! });
    },
    pays(at: number, counts: Float64Array, duals: Float64Array): boolean {
      let reduced = takes[at]! - stockWorth(yard, counts) - duals[rows.length + at]!;
      rows.forEach((piece, row) => (reduced -= duals[row]! * counts[piece]!));
      return reduced < -PAYS;
    },
    prices(duals: Float64Array): Float64Array {
      const prices = stockPrices(yard);
      rows.forEach((piece, row) => (prices[piece] = Math.min(ceilings[row]!, Math.max(0, duals[row]!))));
      return prices;
    },
    shares(): Float64Array {
      const amounts = programme.amounts();
      const shares = new Float64Array(job.logs.length);
      for (const { column, log } of owners) shares[log]! += amounts[column]!;
      return shares;
    },
  };
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
