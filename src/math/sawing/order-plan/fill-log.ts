import { fillFlitch, without, type Filled, type Wants } from "./fill-flitch";
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

/** One of the best known ways down to a face, with what is still wanted above it. */
interface Label {
  worth: number;
  boards: number;
  /** By kind, which of the known wants is left; worked out when it is asked for. */
  wants?: number[];
  below?: Label;
  /** The flitch under the face. */
  filled?: Filled;
  kind: number;
  face: number;
}

/** Flitches filled at one set of prices, so that none is filled twice. */
export interface FlitchesKnown {
  kinds: KnownOfKind[];
}

interface KnownOfKind {
  /** What has been left to be wanted, and for each of these what matters of it to one flitch. */
  wants: Wants[];
  cut: number[];
  /** What can matter to one flitch, and by that and by profile how it is filled. */
  places: Map<string, number>;
  cutWants: Wants[];
  filled: Map<number, Filled>;
}

export function noFlitches({ kinds }: Yard): FlitchesKnown {
  return {
    kinds: kinds.map(() => ({
      wants: [],
      cut: [],
      places: new Map<string, number>(),
      cutWants: [],
      filled: new Map(),
    })),
  };
}

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
  flitches: FlitchesKnown,
): LogPlan {
  const { job, kinds, tops } = yard;
  const { job: logJob } = job.logs[log]!;
  const top = tops[log]!;
  yard.work.done += top * kinds.length * ways * FILLING;
  const wants = kinds.map(({ kind }, k) =>
    wantOf(
      yard,
      flitches,
      k,
      kind.pieces.map((piece) => wanted[piece]!),
    ),
  );
  const start: Label = { worth: 0, boards: 0, wants, kind: -1, face: -1 };
  const nothing = [start];
  const labels: Label[][] = [];
  let best = start;
  for (let face = 0; face <= top; face++) {
    let here = nothing;
    for (let k = 0; k < kinds.length; k++) {
      const low = face - logJob.products[k]!.greenSteps;
      const below = low - logJob.kerfSteps;
      if (below < logJob.bedSteps) continue;
      const profile = kinds[k]!.at[log]![low]!;
      if (profile < 0) continue;
      for (const label of labels[below]!) {
        const filled = flitchIn(yard, worths, flitches, k, profile, wantsOf(yard, flitches, label)[k]!);
        const worth = label.worth + filled.worth;
        if (filled.worth <= 0 || (here.length >= ways && worth <= here[here.length - 1]!.worth + SAME)) continue;
        const above: Label = { worth, boards: label.boards + 1, below: label, filled, kind: k, face };
        here = ways === 1 ? [above] : withLabel(here, above, ways, (a, b) => leavesSame(yard, flitches, a, b));
      }
    }
    labels.push(here);
    const first = here[0]!;
    if (first.worth > best.worth + SAME || (first.worth > best.worth - SAME && first.boards < best.boards))
      best = first;
  }
  return planOf(yard, log, best);
}

function leavesSame(yard: Yard, flitches: FlitchesKnown, a: Label, b: Label): boolean {
  const ofA = wantsOf(yard, flitches, a);
  const ofB = wantsOf(yard, flitches, b);
  return flitches.kinds.every(({ wants }, k) => {
    const other = wants[ofB[k]!]!;
    return wants[ofA[k]!]!.every((count, i) => count === other[i]);
  });
}

/** Most labels are soon beaten, so what they leave is not worked out before they are built upon. */
function wantsOf(yard: Yard, flitches: FlitchesKnown, label: Label): number[] {
  if (label.wants) return label.wants;
  const { kind, filled } = label;
  label.wants = wantsOf(yard, flitches, label.below!).slice();
  let left = flitches.kinds[kind]!.wants[label.wants[kind]!]!;
  for (const { pieces } of filled!.strips) left = without(left, pieces);
  label.wants[kind] = wantOf(yard, flitches, kind, left);
  return label.wants;
}

/** The labels of a face, best first, with one more; of two that leave the same only the better is kept. */
function withLabel(here: Label[], label: Label, ways: number, areSame: (a: Label, b: Label) => boolean): Label[] {
  const same = here.findIndex((other) => areSame(other, label));
  if (same >= 0 && here[same]!.worth >= label.worth - SAME) return here;
  const others = here.filter((_, at) => at !== same);
  const place = others.findIndex(({ worth }) => worth < label.worth);
  others.splice(place < 0 ? others.length : place, 0, label);
  return others.slice(0, ways);
}

function flitchIn(
  yard: Yard,
  worths: Worths,
  { kinds }: FlitchesKnown,
  k: number,
  profile: number,
  want: number,
): Filled {
  const { cut, cutWants, filled } = kinds[k]!;
  const at = cut[want]!;
  const key = at * yard.kinds[k]!.profiles.length + profile;
  let found = filled.get(key);
  if (!found) filled.set(key, (found = fillFlitch(yard, worths, k, profile, cutWants[at]!)));
  return found;
}

/** A place for what is wanted. What is more than one flitch can hold of a piece makes no difference to how it is filled. */
function wantOf(yard: Yard, { kinds }: FlitchesKnown, k: number, left: Wants): number {
  const { wants, cut, places, cutWants } = kinds[k]!;
  const most = yard.mostInFlitch[k]!;
  const cutLeft = left.map((count, i) => Math.min(count, most[i]!));
  const key = cutLeft.join();
  let at = places.get(key);
  if (at === undefined) {
    at = cutWants.push(cutLeft) - 1;
    places.set(key, at);
  }
  cut.push(at);
  return wants.push(left) - 1;
}

function planOf({ job, kinds }: Yard, log: number, label: Label): LogPlan {
  const counts = new Float64Array(job.pieces.length);
  const flitches: PlannedFlitch[] = [];
  for (let at: Label | undefined = label; at?.filled; at = at.below) {
    const { filled, kind, face } = at;
    flitches.push({ ...filled, kind, face });
    for (const { pieces } of filled.strips) for (const i of pieces) counts[kinds[kind]!.kind.pieces[i]!]!++;
  }
  return { log, counts, flitches, worth: label.worth };
}
