import { fillFlitch, type Filled } from "./fill-flitch";
import type { Worths, Yard } from "./weigh";

/** A flitch of a plan, where it lies and what it is cut into. */
export interface PlannedFlitch extends Filled {
  kind: number;
  /** Its upper face, in scale steps above the bed. */
  face: number;
}

/** What one log gives to the order, flitches from the top down. */
export interface LogPlan {
  log: number;
  /** By piece. */
  counts: Float64Array;
  flitches: readonly PlannedFlitch[];
  worth: number;
}

/** The best known ways down to one face, with what is still wanted above it. */
interface Label {
  worth: number;
  boards: number;
  /** By kind, which of the known wants is left. */
  wants: readonly number[];
  below?: Label;
  flitch?: PlannedFlitch;
}

/** Flitches filled at one set of prices, so that none is filled twice. */
export interface FlitchesKnown {
  wants: { places: Map<string, number>; left: Float64Array[] }[];
  filled: Map<number, { filled: Filled; want: number }>[];
}

export function noFlitches({ kinds }: Yard): FlitchesKnown {
  return {
    wants: kinds.map(() => ({ places: new Map<string, number>(), left: [] })),
    filled: kinds.map(() => new Map<number, { filled: Filled; want: number }>()),
  };
}

/** No order has so many states of one kind in one search. */
const MOST_WANTS = 1 << 20;
const SAME = 1e-9;
/** To fill a flitch within counts takes about as long as weighing so many faces. */
const FILLING = 6;

/**
 * A log sawn for what is still wanted: the stack of the cut plan, every face with the best few ways down from it and what
 * each of them leaves to be wanted.
 */
export function fillLog(
  yard: Yard,
  worths: Worths,
  log: number,
  wanted: Float64Array,
  ways: number,
  known: FlitchesKnown,
): LogPlan {
  const { job, kinds, tops } = yard;
  const { job: logJob } = job.logs[log]!;
  const top = tops[log]!;
  yard.work.done += top * kinds.length * ways * FILLING;
  const wants = kinds.map(({ kind }, k) =>
    wantOf(
      known,
      k,
      Float64Array.from(kind.pieces, (piece) => wanted[piece]!),
    ),
  );
  const start: Label = { worth: 0, boards: 0, wants };
  const nothing = [start];
  const labels: Label[][] = [];
  let best = start;
  for (let face = 0; face <= top; face++) {
    let here = nothing;
    for (let k = 0; k < kinds.length; k++) {
      const low = face - logJob.products[k]!.greenSteps;
      const below = low - logJob.kerfSteps;
      if (below < logJob.bedSteps) continue;
      const profile = kinds[k]!.at[log]![low] ?? -1;
      if (profile < 0) continue;
      for (const label of labels[below]!) here = withFlitch(yard, worths, known, here, label, k, profile, face, ways);
    }
    labels.push(here);
    const first = here[0]!;
    if (first.worth > best.worth + SAME || (first.worth > best.worth - SAME && first.boards < best.boards)) best = first;
  }
  return planOf(yard, log, best);
}

/** The labels of a face with one more flitch on a label below it, where that is among the best. */
function withFlitch(
  yard: Yard,
  worths: Worths,
  known: FlitchesKnown,
  here: Label[],
  below: Label,
  k: number,
  profile: number,
  face: number,
  ways: number,
): Label[] {
  const { filled, want } = flitchIn(yard, worths, known, k, profile, below.wants[k]!);
  if (filled.worth <= 0) return here;
  const worth = below.worth + filled.worth;
  const last = here.at(-1)!;
  if (here.length >= ways && worth <= last.worth + SAME) return here;
  const wants = below.wants.map((one, i) => (i === k ? want : one));
  const same = here.findIndex((label) => label.wants.every((one, i) => one === wants[i]));
  if (same >= 0 && here[same]!.worth >= worth - SAME) return here;
  const label: Label = { worth, boards: below.boards + 1, wants, below, flitch: { ...filled, kind: k, face } };
  const others = here.filter((_, at) => at !== same);
  const place = others.findIndex((other) => other.worth < worth);
  others.splice(place < 0 ? others.length : place, 0, label);
  return others.slice(0, ways);
}

function flitchIn(yard: Yard, worths: Worths, known: FlitchesKnown, k: number, profile: number, want: number) {
  const key = profile * MOST_WANTS + want;
  let found = known.filled[k]!.get(key);
  if (!found) {
    const filled = fillFlitch(yard, worths, k, profile, known.wants[k]!.left[want]!);
    found = { filled, want: filled.run < 0 ? want : wantOf(known, k, filled.left) };
    known.filled[k]!.set(key, found);
  }
  return found;
}

function wantOf({ wants }: FlitchesKnown, k: number, left: Float64Array): number {
  const { places, left: all } = wants[k]!;
  const key = left.join();
  let at = places.get(key);
  if (at === undefined) {
    at = all.push(left) - 1;
    places.set(key, at);
  }
  return at;
}

function planOf({ job, kinds }: Yard, log: number, label: Label): LogPlan {
  const counts = new Float64Array(job.pieces.length);
  const flitches: PlannedFlitch[] = [];
  for (let at: Label | undefined = label; at?.flitch; at = at.below) {
    const { flitch } = at;
    flitches.push(flitch);
    for (const { pieces } of flitch.strips) for (const i of pieces) counts[kinds[flitch.kind]!.kind.pieces[i]!]!++;
  }
  return { log, counts, flitches, worth: label.worth };
}
