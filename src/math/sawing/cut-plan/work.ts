import { NoAnswer } from "../../errors";
import { halfAcrossAt, halfUpAt, widestIn, type CutJob } from "./cut-job";
import { commonDrop } from "./quarter-order";
import { sweptStations } from "./swept-flitch";

/** How many flitches may be weighed, each length of them counted: this takes about half a second. */
const MOST_WORK = 4_000_000;

/** A flitch is rarely weighed in more lengths than this, because the longest that fits is nearly always the best. */
const USUAL_LENGTHS = 3;

/** To find the best place of a cant, about one in so many places has to be planned in full. */
const PLACES_TO_ONE_SAWN = 32;

/** A timber is tried either way up, and each time the turned cant is weighed from both its ends. */
const WAYS_UP = 2;

/** Filling so many entries of a table of widths takes as long as weighing one flitch. */
const ENTRIES_TO_ONE_FLITCH = 10;

/** Refuses a job whose scale is so fine, or choices so many, that a spreadsheet would stand still. */
export function mustBeBounded(job: CutJob): void {
  const work = flitchesIn(job) * job.products.length * lengthWork(job) + menuWork(job);
  if (work > MOST_WORK)
    throw new NoAnswer(
      `scale step, products, widths and lengths: wanted up to ${MOST_WORK} cuts to weigh, got about ` +
        `${Math.round(work)}; take a coarser scale step or fewer choices`,
    );
}

function flitchesIn(job: CutJob): number {
  const { log, stepIn, pattern } = job;
  const up = (2 * halfUpAt(log, log.lengthIn)) / stepIn;
  const across = (2 * halfAcrossAt(log, log.lengthIn)) / stepIn;
  if (pattern === "quarter") return (up / 2 / commonDrop(job)) ** 2;
  if (pattern === "timber") return 2 * up + 2 * WAYS_UP * across;
  if (pattern !== "cant") return up;
  const sawn = job.cantWidths.map(({ greenSteps }) =>
    job.cantOffset === "free" ? greenSteps / PLACES_TO_ONE_SAWN : 1,
  );
  return 2 * up + across * sawn.reduce((sum, places) => sum + Math.max(1, places), 0);
}

/** A bowed log is looked at from every station to every other. */
function lengthWork(job: CutJob): number {
  if (job.sweep && job.pattern === "live") return sweptStations(job.log) ** 2 / 8;
  return Math.min(USUAL_LENGTHS, Math.max(1, job.lengthsFt.length));
}

/** Ripping a flitch weighs every width at every capacity. */
function menuWork(job: CutJob): number {
  const entries = (widestIn(job.log) / job.stepIn) * (job.rip ? job.widths.length : 1);
  return (entries * job.products.length) / ENTRIES_TO_ONE_FLITCH;
}
