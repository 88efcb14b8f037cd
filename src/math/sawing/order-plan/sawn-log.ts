import { sumOf } from "../../numbers";
import { halfUpAt } from "../cut-plan/cut-job";
import type { LogPlan } from "./fill-log";
import type { YardLog } from "./order-job";
import type { OrderRequest, ReadOrder } from "./order-request";
import type { Searched } from "./order-improve";

/** Pieces side by side or one after the other in a strip of a flitch. */
export interface SawnStrip {
  greenIn: number;
  /** Lines of the order, as places, one for each piece from the butt on. */
  lines: readonly number[];
}

/** A flitch as it is sawn. Heights are above the bed. */
export interface SawnFlitch {
  lowIn: number;
  greenIn: number;
  kerfIn: number;
  /** From the butt. */
  runIn: number;
  /** Widest first. */
  strips: readonly SawnStrip[];
  boardFeet: number;
}

/** A log of the plan, with its passes from the top down. */
export interface SawnLog {
  log: YardLog;
  woodBoardFeet: number;
  boardFeet: number;
  /** Pieces, by line of the order. */
  made: readonly number[];
  flitches: readonly SawnFlitch[];
  /** What stands above the first flitch and below the last one's kerf at the butt. */
  aboveIn: number;
  belowIn: number;
  buttIn: number;
}

/** The logs of a plan in the order of the yard. Pieces of one size go to its lines from the top down. */
export function sawnLogs({ order, logs }: OrderRequest, read: ReadOrder, { yard, found }: Searched): SawnLog[] {
  const { job } = yard;
  const wanted = order.map(({ count }) => (count === "stock" ? Infinity : count));
  const lineFor = (piece: number): number => {
    const { lines } = job.pieces[piece]!;
    const line = lines.find((line) => wanted[line]! > 0) ?? lines.at(-1)!;
    wanted[line]!--;
    return line;
  };
  return [...found.plans]
    .sort((a, b) => a.log - b.log)
    .map((plan): SawnLog => {
      const { at, job: logJob, woodBoardFeet } = job.logs[plan.log]!;
      const flitches = plan.flitches.map((flitch) =>
        sawnFlitch(read, searchedKind(yard, flitch.kind), flitch, lineFor),
      );
      const made = order.map((_, line) =>
        sumOf(flitches, ({ strips }) => sumOf(strips, ({ lines }) => lines.filter((one) => one === line).length)),
      );
      const buttIn = 2 * halfUpAt(logJob.log, logJob.log.lengthIn);
      const lowest = flitches.at(-1)!;
      return {
        log: logs[at]!,
        woodBoardFeet,
        boardFeet: sumOf(flitches, ({ boardFeet }) => boardFeet),
        made,
        flitches,
        aboveIn: buttIn - flitches[0]!.lowIn - flitches[0]!.greenIn,
        belowIn: lowest.lowIn - lowest.kerfIn,
        buttIn,
      };
    });
}

function searchedKind({ kinds, job }: Searched["yard"], at: number) {
  return { ...kinds[at]!.kind, stepIn: job.stepIn, kerfIn: job.kerfSteps * job.stepIn };
}

function sawnFlitch(
  { sizes }: ReadOrder,
  kind: ReturnType<typeof searchedKind>,
  { face, run, strips }: LogPlan["flitches"][number],
  lineFor: (piece: number) => number,
): SawnFlitch {
  const { greenSteps, stepIn, kerfIn, widths, runsIn } = kind;
  const sawn = [...strips]
    .sort((a, b) => b.width - a.width)
    .map(({ width, pieces }): SawnStrip => {
      const lines = pieces.map((i) => lineFor(kind.pieces[i]!));
      return { greenIn: widths[width]! * stepIn, lines };
    });
  return {
    lowIn: (face - greenSteps) * stepIn,
    greenIn: greenSteps * stepIn,
    kerfIn,
    runIn: runsIn[run]!,
    strips: sawn,
    boardFeet: sumOf(sawn, ({ lines }) => sumOf(lines, (line) => sizes[line]!.boardFeet)),
  };
}
