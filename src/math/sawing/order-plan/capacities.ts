import { NEAR } from "../../rounding";
import { halfAcrossAt, halfUpAt, widestIn, type CutJob } from "../cut-plan/cut-job";
import { flatsIn } from "../cut-plan/guides";
import { halfFaceIn } from "../cut-plan/half-face";
import { stepsWithin } from "../cut-plan/scale-steps";
import type { Kind, OrderJob } from "./order-job";

/**
 * Widths that strips side by side can add up to, each with a rip kerf behind it, narrowest first; place 0 is none.
 * A flitch as wide as lies between two of them is no better than the narrower.
 */
export interface Sums {
  sizes: readonly number[];
  /** For a width of strip and a place: the place that is left beside that strip; -1 where it does not fit. */
  left: readonly Int16Array[];
}

/** How wide a flitch of a kind is in every run, as places among the sums; -1 where the run is longer than the log. */
export type Profile = Int16Array;

/** What of a kind may be had anywhere in the yard. */
export interface KindPlaces {
  kind: Kind;
  sums: Sums;
  profiles: Profile[];
  /** For every log and lower face in steps, its profile; -1 where nothing fits. */
  at: readonly Int32Array[];
}

/** The usable width of every flitch of the yard: worked out once, because it depends on no price. */
export function placesIn(job: OrderJob): KindPlaces[] {
  const widest = Math.max(0, ...job.logs.map(({ job }) => Math.ceil(widestIn(job.log) / job.stepIn) + 1));
  return job.kinds.map((kind, k) => {
    const sums = sumsOf(kind.widths, job.ripKerfSteps, widest);
    const placeOf = placesByWidth(sums, job.ripKerfSteps, widest);
    const profiles: Profile[] = [];
    const known = new Map<string, number>();
    const at = job.logs.map((log) => profilesIn(log.job, k, kind, placeOf, profiles, known));
    return { kind, sums, profiles, at };
  });
}

function sumsOf(widths: readonly number[], ripKerf: number, widest: number): Sums {
  const most = widest + ripKerf;
  const reached = new Uint8Array(most + 1);
  reached[0] = 1;
  for (let sum = 0; sum <= most; sum++)
    if (reached[sum]) for (const width of widths) if (sum + width + ripKerf <= most) reached[sum + width + ripKerf] = 1;
  const sizes = [...reached.keys()].filter((sum) => reached[sum]);
  const placeOf = lastAtMost(sizes, most);
  const left = widths.map((width) =>
    Int16Array.from(sizes, (size) => (size < width + ripKerf ? -1 : placeOf[size - width - ripKerf]!)),
  );
  return { sizes, left };
}

/** For every usable width in steps, the widest sum that goes into it. The last strip needs no kerf behind it. */
function placesByWidth({ sizes }: Sums, ripKerf: number, widest: number): Int16Array {
  return lastAtMost(sizes, widest + ripKerf).subarray(ripKerf);
}

function lastAtMost(sizes: readonly number[], most: number): Int16Array {
  const places = new Int16Array(most + 1);
  let place = 0;
  for (let size = 0; size <= most; size++) {
    if (place + 1 < sizes.length && sizes[place + 1]! <= size) place++;
    places[size] = place;
  }
  return places;
}

/** Neighbouring faces mostly have the same profile, so a face is first held against the one under it. */
function profilesIn(
  job: CutJob,
  k: number,
  { runsIn }: Kind,
  placeOf: Int16Array,
  profiles: Profile[],
  known: Map<string, number>,
): Int32Array {
  const { log, stepIn } = job;
  const { greenSteps, greenIn } = job.products[k]!;
  const waneIn = job.wane * greenIn;
  const mostIn = flatsIn(job);
  const faces = stepsWithin(2 * halfUpAt(log, log.lengthIn), stepIn) - greenSteps + 1;
  const sections = runsIn.map((runIn) => sectionAt(job, log.lengthIn - runIn));
  const at = new Int32Array(Math.max(0, faces)).fill(-1);
  const profile = new Int16Array(runsIn.length);
  let last = -1;
  for (let face = 0; face < faces; face++) {
    const lowIn = face * stepIn + waneIn;
    const highIn = face * stepIn + greenIn - waneIn;
    let changed = last < 0;
    for (let run = 0; run < sections.length; run++) {
      const section = sections[run];
      const half = section ? halfFaceIn(section.across, section.up, section.pith, lowIn, highIn) : -1;
      const place = half < 0 ? -1 : placeOf[stepsWithin(2 * Math.min(half, mostIn), stepIn)]!;
      changed ||= profile[run] !== place;
      profile[run] = place;
    }
    if (changed) last = interned(profile, profiles, known);
    at[face] = last;
  }
  return at;
}

function sectionAt({ log, lies }: CutJob, startIn: number) {
  if (startIn < -NEAR) return undefined;
  const z = Math.max(0, startIn);
  const up = halfUpAt(log, z);
  return { across: halfAcrossAt(log, z), up, pith: lies === "flat" ? up : halfUpAt(log, log.lengthIn) };
}

function interned(profile: Profile, profiles: Profile[], known: Map<string, number>): number {
  const key = profile.join();
  let at = known.get(key);
  if (at === undefined) {
    at = profiles.length;
    profiles.push(profile.slice());
    known.set(key, at);
  }
  return at;
}
