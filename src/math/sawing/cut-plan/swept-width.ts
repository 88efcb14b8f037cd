import { IN_PER_FT } from "../../units";
import { halfAcrossAt, halfUpAt, type CutJob, type Log, type Sweep } from "./cut-job";
import type { FlitchWidth } from "./flitch-width";
import { halfFaceIn } from "./half-face";

/** A bowed log is looked at every so many inches of its length. */
export const STATION_IN = 6;

/** A bowed log on the bed, station by station from the small end. */
export interface SweptLog {
  halfAcrossIn: Float64Array;
  halfUpIn: Float64Array;
  /** Height of the pith, so that the log just touches the bed. */
  pithIn: Float64Array;
  /** How far the pith is moved across. */
  acrossIn: Float64Array;
  topIn: number;
}

export function sweptStations(log: Log): number {
  return Math.round(log.lengthIn / STATION_IN) + 1;
}

export function sweptLog(log: Log, sweep: Sweep): SweptLog {
  const z = Float64Array.from({ length: sweptStations(log) }, (_, i) => i * STATION_IN);
  const bowIn = z.map((at) => 4 * sweep.riseIn * (at / log.lengthIn) * (1 - at / log.lengthIn));
  const halfUpIn = z.map((at) => halfUpAt(log, at));
  const lift = { up: 1, down: -1, side: 0 }[sweep.way];
  const restIn = -Math.min(...bowIn.map((bow, i) => lift * bow - halfUpIn[i]!));
  const pithIn = bowIn.map((bow) => restIn + lift * bow);
  return {
    halfAcrossIn: z.map((at) => halfAcrossAt(log, at)),
    halfUpIn,
    pithIn,
    acrossIn: sweep.way === "side" ? bowIn : bowIn.map(() => 0),
    topIn: Math.max(...pithIn.map((pith, i) => pith + halfUpIn[i]!)),
  };
}

/** Widths in a bowed log: a board may start at any station, and must be straight. Flats on the sides reach `limitIn`. */
export function sweptWidth(job: CutJob, swept: SweptLog, limitIn = Infinity): FlitchWidth {
  const stations = swept.pithIn.length;
  const spans = job.lengthsFt.map((length) => Math.round((IN_PER_FT * length + job.trimIn) / STATION_IN));
  const lengthOfSpan = new Int32Array(stations).fill(-1);
  spans.forEach((span, i) => (lengthOfSpan[span] = i));
  const halfIn = new Float64Array(stations);
  const widestIn = new Float64Array(spans.length);
  const places = spans.map(() => ({ middleIn: 0, startIn: 0 }));

  const lookFrom = (start: number) => {
    let right = Infinity;
    let left = -Infinity;
    for (let end = start; end < stations && halfIn[end]! > 0; end++) {
      right = Math.min(right, swept.acrossIn[end]! + halfIn[end]!);
      left = Math.max(left, swept.acrossIn[end]! - halfIn[end]!);
      const i = lengthOfSpan[end - start]!;
      if (i < 0 || right - left <= widestIn[i]!) continue;
      widestIn[i] = right - left;
      places[i] = { middleIn: (right + left) / 2, startIn: start * STATION_IN };
    }
  };
  return {
    shorterIsWider: false,
    look: (lowIn, highIn) => {
      for (let s = 0; s < stations; s++) {
        const half = halfFaceIn(swept.halfAcrossIn[s]!, swept.halfUpIn[s]!, swept.pithIn[s]!, lowIn, highIn);
        halfIn[s] = Math.min(limitIn, half);
      }
      widestIn.fill(0);
      for (let start = 0; start < stations; start++) lookFrom(start);
    },
    usableIn: (i) => widestIn[i]!,
    place: (i) => places[i]!,
  };
}
