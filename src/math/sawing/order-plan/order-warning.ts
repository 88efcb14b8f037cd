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
  /** No log is long enough, or no butt wide enough, for a line of the order. */
  | { code: "too long" | "too wide"; row: number };

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
  const longestIn = Math.max(0, ...job.logs.map(({ job: { log } }) => log.lengthIn));
  const widest = Math.max(0, ...job.logs.map(({ job: { log } }) => log.smallUpIn + log.taperInPerIn * log.lengthIn));
  for (const { cutIn, widthSteps, lines } of job.pieces)
    for (const line of lines) {
      const { row } = order[line]!;
      if (cutIn > longestIn) warnings.push({ code: "too long", row });
      else if (widthSteps * job.stepIn > widest) warnings.push({ code: "too wide", row });
    }
  const passes = sawn.flatMap(({ flitches }) =>
    flitches.map(({ lowIn, kerfIn }) => ({ bladeHeightIn: lowIn - kerfIn })),
  );
  if (first)
    for (const warning of lowBladeWarning(first, passes)) if (warning.code === "low blade") warnings.push(warning);
  return warnings;
}
