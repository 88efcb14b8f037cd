import type { KindPlaces } from "./capacities";
import type { OrderJob } from "./order-job";
import { longestWithin } from "./runs";

/** What a flitch of a kind is worth at given prices of its pieces, for all runs and widths at once. */
export interface KindWorth {
  /** By width of strip and run: the worth of the best strip, and the piece at its head; -1 where none goes in. */
  strips: Float64Array;
  head: Int16Array;
  /** By run and place among the sums: the worth of the best strips side by side. */
  flitches: Float64Array;
  /** The runs that may be worth more than a shorter one. */
  liveRuns: number[];
}

/** What stays the same whatever the prices: for each piece of a kind and each run, the run left behind the piece. */
export type Behind = readonly Int16Array[];

/** -2: the piece does not go into the run. -1: it does, and nothing behind it. */
const NOT_IN = -2;

/** The run that is left behind each piece in each run. */
export function behindPieces(job: OrderJob, { kind }: KindPlaces): Behind {
  return kind.pieces.map((piece) => {
    const { cutIn } = job.pieces[piece]!;
    return Int16Array.from(kind.runsIn, (runIn) => {
      if (longestWithin([cutIn], runIn) < 0) return NOT_IN;
      return longestWithin(kind.runsIn, runIn - cutIn - job.crosscutIn);
    });
  });
}

/**
 * Two knapsacks: pieces one after the other in a strip, and strips side by side in a flitch. Both take as many of a piece as
 * fit, so one table serves every log.
 */
export function worthOfKind(job: OrderJob, places: KindPlaces, behind: Behind, prices: Float64Array): KindWorth {
  const { kind, sums } = places;
  const runs = kind.runsIn.length;
  const strips = new Float64Array(kind.widths.length * runs);
  const head = new Int16Array(strips.length).fill(-1);
  for (let width = 0; width < kind.widths.length; width++)
    for (let run = 0; run < runs; run++) {
      const cell = width * runs + run;
      for (let i = 0; i < kind.pieces.length; i++) {
        const piece = kind.pieces[i]!;
        const rest = behind[i]![run]!;
        if (job.pieces[piece]!.width > width || rest === NOT_IN) continue;
        const worth = prices[piece]! + (rest < 0 ? 0 : strips[width * runs + rest]!);
        if (worth <= strips[cell]!) continue;
        strips[cell] = worth;
        head[cell] = i;
      }
    }
  const flitches = new Float64Array(runs * sums.sizes.length);
  for (let run = 0; run < runs; run++) fillRun(flitches, run, places, strips, runs);
  return { strips, head, flitches, liveRuns: liveRunsOf(strips, kind.widths.length, runs) };
}

function fillRun(flitches: Float64Array, run: number, { kind, sums }: KindPlaces, strips: Float64Array, runs: number) {
  const size = sums.sizes.length;
  const base = run * size;
  for (let place = 1; place < size; place++) {
    let best = flitches[base + place - 1]!;
    for (let width = 0; width < kind.widths.length; width++) {
      const left = sums.left[width]![place]!;
      if (left < 0) continue;
      const worth = strips[width * runs + run]! + flitches[base + left]!;
      if (worth > best) best = worth;
    }
    flitches[base + place] = best;
  }
}

/** A longer run is never wider, so one whose strips are worth no more than those of the next shorter is left out. */
function liveRunsOf(strips: Float64Array, widths: number, runs: number): number[] {
  const live: number[] = [];
  for (let run = 0; run < runs; run++) {
    let more = run === 0;
    for (let width = 0; width < widths && !more; width++)
      more = strips[width * runs + run]! > strips[width * runs + run - 1]!;
    if (more) live.push(run);
  }
  return live;
}

/** The pieces of the best strip of a width and run, as places among the pieces of the kind. */
export function stripPieces(worth: KindWorth, behind: Behind, runs: number, width: number, run: number): number[] {
  const pieces: number[] = [];
  for (let at = run; at >= 0;) {
    const i = worth.head[width * runs + at]!;
    if (i < 0) break;
    pieces.push(i);
    at = behind[i]![at]!;
  }
  return pieces;
}

/** The widths of the best strips side by side, as places among the widths of the kind. */
export function stripWidths(worth: KindWorth, { kind, sums }: KindPlaces, run: number, place: number): number[] {
  const runs = kind.runsIn.length;
  const row = (at: number) => worth.flitches[run * sums.sizes.length + at]!;
  const widths: number[] = [];
  for (let at = place; at > 0 && row(at) > 0;) {
    const here = row(at);
    const width = kind.widths.findIndex((_, w) => {
      const left = sums.left[w]![at]!;
      return left >= 0 && worth.strips[w * runs + run]! > 0 && worth.strips[w * runs + run]! + row(left) === here;
    });
    if (width >= 0) widths.push(width);
    at = width < 0 ? at - 1 : sums.left[width]![at]!;
  }
  return widths;
}
