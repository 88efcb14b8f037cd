import { IN_PER_FT } from "../../units";
import { halfAcrossAt, halfUpAt, type CutJob, type Log, type Sweep } from "./cut-job";
import { bestOfAll, perInchOf } from "./best-length";
import type { EdgedBoards } from "./flitch";
import { halfFaceIn } from "./half-face";
import { stepsWithin } from "./scale-steps";
import type { WidthMenu } from "./width-menu";

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

/** Boards in a bowed log: one may start at any station, and must be straight. Flats on the sides reach `limitIn`. */
export function sweptBoards(
  job: CutJob,
  swept: SweptLog,
  menus: readonly WidthMenu[],
  limitIn = Infinity,
): EdgedBoards {
  const { lengthsFt, stepIn } = job;
  const spans = lengthsFt.map((length) => Math.round((IN_PER_FT * length + job.trimIn) / STATION_IN));
  const straight = straightWays(swept, spans, limitIn);
  const perInch = perInchOf(job);
  return {
    best: (product, lowIn, highIn) => {
      const { wideIn } = straight(lowIn, highIn);
      const { most } = menus[product]!;
      return bestOfAll(perInch[product]!, (i) => most[stepsWithin(wideIn[i]!, stepIn)]!);
    },
    place: (lowIn, highIn, i) => {
      const { wideIn, middleIn, startIn } = straight(lowIn, highIn);
      return { usableSteps: stepsWithin(wideIn[i]!, stepIn), middleIn: middleIn[i]!, startIn: startIn[i]! };
    },
  };
}

/** For each span of stations, the widest straight way through a flitch: its width, its middle across, and where it starts. */
interface Ways {
  wideIn: Float64Array;
  middleIn: Float64Array;
  startIn: Float64Array;
}

function straightWays(
  { halfAcrossIn, halfUpIn, pithIn, acrossIn }: SweptLog,
  spans: readonly number[],
  limitIn: number,
): (lowIn: number, highIn: number) => Ways {
  const stations = pithIn.length;
  const wayOfSpan = new Int32Array(stations).fill(-1);
  spans.forEach((span, i) => (wayOfSpan[span] = i));

  return (lowIn, highIn) => {
    const halfIn = new Float64Array(stations);
    for (let s = 0; s < stations; s++)
      halfIn[s] = Math.min(limitIn, halfFaceIn(halfAcrossIn[s]!, halfUpIn[s]!, pithIn[s]!, lowIn, highIn));
    const wideIn = new Float64Array(spans.length);
    const middleIn = new Float64Array(spans.length);
    const startIn = new Float64Array(spans.length);
    for (let start = 0; start < stations; start++) {
      let right = Infinity;
      let left = -Infinity;
      for (let end = start; end < stations && halfIn[end]! > 0; end++) {
        right = Math.min(right, acrossIn[end]! + halfIn[end]!);
        left = Math.max(left, acrossIn[end]! - halfIn[end]!);
        const i = wayOfSpan[end - start]!;
        if (i < 0 || right - left <= wideIn[i]!) continue;
        wideIn[i] = right - left;
        middleIn[i] = (right + left) / 2;
        startIn[i] = start * STATION_IN;
      }
    }
    return { wideIn, middleIn, startIn };
  };
}
