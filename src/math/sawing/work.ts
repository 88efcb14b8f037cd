import { NoAnswer } from "../errors";
import { halfAcrossAt, halfUpAt, widestIn, type CutJob } from "./cut-job";
import { sweptStations } from "./swept-width";

/** About how many flitches, each in every length, may be weighed: a second's work or less. */
const MOST_WORK = 40_000_000;

/** Refuses a job whose scale is so fine, or choices so many, that a spreadsheet would stand still. */
export function mustBeBounded(job: CutJob): void {
  const work = flitchesOf(job) * Math.max(1, job.products.length) * Math.max(1, lengthWork(job)) + menuWork(job);
  if (work > MOST_WORK)
    throw new NoAnswer(
      `scale step, products, widths and lengths: wanted up to ${MOST_WORK} cuts to weigh, got about ` +
        `${Math.round(work)}; take a coarser scale step or fewer choices`,
    );
}

function flitchesOf(job: CutJob): number {
  const { log, stepIn } = job;
  const up = (2 * halfUpAt(log, log.lengthIn)) / stepIn;
  const across = (2 * halfAcrossAt(log, log.lengthIn)) / stepIn;
  if (job.pattern === "quarter") return up * up * 0.5;
  if (job.pattern !== "cant") return up;
  const places = job.cantWidths.reduce(
    (sum, { greenSteps }) => sum + (job.cantOffset === "free" ? greenSteps + 1 : 1),
    0,
  );
  return 2 * up + places * across;
}

/** A bowed log is looked at from every station to every other; else a flitch rarely needs more than three lengths. */
function lengthWork(job: CutJob): number {
  return job.sweep && job.pattern === "live" ? sweptStations(job.log) ** 2 / 2 : Math.min(3, job.lengthsFt.length);
}

/** Ripping a flitch weighs every width at every capacity. */
function menuWork(job: CutJob): number {
  return (widestIn(job.log) / job.stepIn) * (job.rip ? job.widths.length : 1) * job.products.length;
}
