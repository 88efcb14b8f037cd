import { NEAR } from "../../rounding";
import { bestStack, boardsUnder } from "../cut-plan/stack";
import { stepsWithin } from "../cut-plan/scale-steps";
import { halfUpAt } from "../cut-plan/cut-job";
import { placesIn, type KindPlaces } from "./capacities";
import type { OrderJob } from "./order-job";
import { behindPieces, stripPieces, stripWidths, worthOfKind, type Behind, type KindWorth } from "./worth";

/** All that stays the same while prices change. */
export interface Yard {
  job: OrderJob;
  kinds: readonly KindPlaces[];
  behind: readonly Behind[];
  /** The highest face of each log, in scale steps. */
  tops: readonly number[];
  /** By kind, how many of each of its pieces one flitch can hold. */
  mostInFlitch: readonly (readonly number[])[];
  /** Faces weighed so far: the search is limited by these, never by the time they take. */
  work: { done: number };
}

/** What pieces are worth, and with that every flitch of the yard. */
export interface Worths {
  prices: Float64Array;
  kinds: readonly KindWorth[];
  /** By kind and profile, the worth of the best flitch; not yet weighed where it is below 0. */
  ofProfiles: readonly Float64Array[];
}

/** What a log gives, piece by piece, and what that is worth. */
export interface Yielded {
  counts: Float64Array;
  worth: number;
}

export function yardOf(job: OrderJob): Yard {
  const kinds = placesIn(job);
  const tops = job.logs.map(({ job: { log, stepIn } }) => stepsWithin(2 * halfUpAt(log, log.lengthIn), stepIn));
  return {
    job,
    kinds,
    behind: kinds.map((places) => behindPieces(job, places)),
    tops,
    mostInFlitch: kinds.map((places) => mostInFlitch(job, places)),
    work: { done: 0 },
  };
}

function mostInFlitch(job: OrderJob, { kind, sums }: KindPlaces): number[] {
  const widest = sums.sizes.at(-1)!;
  const longest = kind.runsIn.at(-1) ?? 0;
  return kind.pieces.map((piece) => {
    const { widthSteps, cutIn } = job.pieces[piece]!;
    const side = Math.floor(widest / (widthSteps + job.ripKerfSteps));
    return side * Math.floor((longest + job.crosscutIn) / (cutIn + job.crosscutIn) + NEAR);
  });
}

export function worthsAt({ job, kinds, behind }: Yard, prices: Float64Array): Worths {
  return {
    prices,
    kinds: kinds.map((places, k) => worthOfKind(job, places, behind[k]!, prices)),
    ofProfiles: kinds.map(({ profiles }) => new Float64Array(profiles.length).fill(-1)),
  };
}

/** The most that a log can give at these prices, as if any number of each piece were wanted. */
export function weighLog(yard: Yard, worths: Worths, log: number): Yielded {
  const { job, kinds, tops } = yard;
  const { job: logJob } = job.logs[log]!;
  const worthAt = (kind: number, face: number) => {
    const profile = kinds[kind]!.at[log]![face - logJob.products[kind]!.greenSteps];
    return profile === undefined || profile < 0 ? 0 : profileWorth(yard, worths, kind, profile);
  };
  yard.work.done += tops[log]! * kinds.length;
  const stack = bestStack(logJob, tops[log]!, logJob.bedSteps, worthAt);
  const top = stack.most.indexOf(stack.most.reduce((best, worth) => Math.max(best, worth), 0));
  const counts = new Float64Array(job.pieces.length);
  let worth = 0;
  for (const { product: kind, face } of boardsUnder(logJob, stack, top)) {
    const profile = kinds[kind]!.at[log]![face - logJob.products[kind]!.greenSteps]!;
    worth += addPieces(yard, worths, kind, profile, counts);
  }
  return { counts, worth };
}

function profileWorth(yard: Yard, worths: Worths, kind: number, profile: number): number {
  const known = worths.ofProfiles[kind]![profile]!;
  if (known >= 0) return known;
  const run = bestRun(yard, worths, kind, profile);
  const worth = run < 0 ? 0 : worthInRun(yard, worths, kind, profile, run);
  worths.ofProfiles[kind]![profile] = worth;
  return worth;
}

function bestRun(yard: Yard, worths: Worths, kind: number, profile: number): number {
  let best = 0;
  let at = -1;
  for (const run of worths.kinds[kind]!.liveRuns) {
    const worth = worthInRun(yard, worths, kind, profile, run);
    if (worth <= best) continue;
    best = worth;
    at = run;
  }
  return at;
}

/** What a flitch of that profile is worth in a run. */
export function worthInRun({ kinds }: Yard, worths: Worths, kind: number, profile: number, run: number): number {
  const { profiles, sums } = kinds[kind]!;
  const place = profiles[profile]![run]!;
  return place <= 0 ? 0 : worths.kinds[kind]!.flitches[run * sums.sizes.length + place]!;
}

function addPieces(yard: Yard, worths: Worths, kind: number, profile: number, counts: Float64Array): number {
  const places = yard.kinds[kind]!;
  const worth = worths.kinds[kind]!;
  const run = bestRun(yard, worths, kind, profile);
  const runs = places.kind.runsIn.length;
  let total = 0;
  for (const width of stripWidths(worth, places, run, places.profiles[profile]![run]!))
    for (const i of stripPieces(worth, yard.behind[kind]!, runs, width, run)) {
      const piece = places.kind.pieces[i]!;
      counts[piece]!++;
      total += worths.prices[piece]!;
    }
  return total;
}
