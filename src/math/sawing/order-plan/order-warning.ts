import { guidesAreNarrow } from "../cut-plan/guides";
import { lowBladeWarning, warningsAbout, type PlanWarning } from "../cut-plan/plan-warning";
import type { OrderRequest, ReadOrder } from "./order-request";
import type { SawnLog } from "./sawn-log";
import type { YardLog } from "./order-job";

/** What a sawyer should know of a plan before sawing by it. */
export type OrderWarning =
  | Extract<PlanWarning, { code: "rounded" | "low blade" }>
  /** Flats have to be taken off this log's sides first. */
  | { code: "flats"; log: YardLog }
  /** No log is long enough, no butt wide enough, or no log thick enough where it is so wide, for a line of the order. */
  | { code: "too long" | "too wide" | "too large"; row: number };

/** Sizes that were rounded, logs that need flats first, lines that no log can give. */
export function warningsOfOrder(request: OrderRequest, read: ReadOrder, sawn: readonly SawnLog[]): OrderWarning[] {
  const { job } = read;
  const { order, kerfIn, settings = {} } = request;
  const warnings: OrderWarning[] = [];
  const first = job.logs[0]?.job;
  if (first) {
    const ripKerfIn = settings["rip kerf"] ?? kerfIn;
    const asked = { kerfIn, ripKerfIn, products: order, settings };
    for (const warning of warningsAbout({ ...first, rip: true }, asked))
      if (warning.code === "rounded") warnings.push(warning);
  }
  for (const { at, job: logJob } of job.logs) {
    const log = request.logs[at]!;
    if (guidesAreNarrow(logJob) && sawn.some((one) => one.log === log)) warnings.push({ code: "flats", log });
  }
  warnings.push(...linesShort(request, read));
  const passes = sawn.flatMap(({ flitches }) =>
    flitches.map(({ lowIn, kerfIn }) => ({ bladeHeightIn: lowIn - kerfIn })),
  );
  if (first)
    for (const warning of lowBladeWarning(first, passes)) if (warning.code === "low blade") warnings.push(warning);
  return warnings;
}

/** Why a line has to come out short whatever is sawn. */
function linesShort({ order }: OrderRequest, { job, sizes, notToBeHad }: ReadOrder): OrderWarning[] {
  const logs = job.logs.map(({ job: { log } }) => log);
  const longestIn = Math.max(0, ...logs.map(({ lengthIn }) => lengthIn));
  const widestIn = Math.max(0, ...logs.map((log) => log.smallUpIn + log.taperInPerIn * log.lengthIn));
  return [...order.entries()].flatMap(([line, { row }]): OrderWarning[] => {
    const { cutIn, widthSteps } = sizes[line]!;
    if (cutIn > longestIn) return [{ code: "too long", row }];
    if (widthSteps * job.stepIn > widestIn) return [{ code: "too wide", row }];
    return notToBeHad.lines.includes(line) ? [{ code: "too large", row }] : [];
  });
}
