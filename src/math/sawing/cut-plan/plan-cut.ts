import { sawCant } from "./cant";
import type { CutJob, Pattern } from "./cut-job";
import { cutJob, type CutRequest } from "./cut-request";
import { guidesWarning } from "./guides";
import { inchesText } from "../inches-text";
import { sawLive } from "./live";
import type { Pass, Plan, Sawn } from "./plan";
import { sawQuarters } from "./quarter";
import { sawSlabs } from "./slab";
import { yieldBounds } from "./yield-bounds";

const PATTERNS: Readonly<Record<Pattern, (job: CutJob) => Sawn>> = {
  live: sawLive,
  slab: sawSlabs,
  cant: sawCant,
  quarter: sawQuarters,
};

/** The sawing plan of a log with the greatest board feet, or money. */
export function planCut(request: CutRequest): Plan {
  const job = cutJob(request);
  const sawn = PATTERNS[job.pattern](job);
  return {
    job,
    ...sawn,
    ...yieldBounds(job),
    warnings: [...job.warnings, ...guidesWarning(job), ...lowBladeWarning(job, sawn.passes)],
  };
}

/**
 * What the best cut plan of a log gives: board feet, or money where the objective is value.
 *
 * @formula the total of the plan that CUTPLAN answers: the greatest sum of V over stacks of boards a kerf apart
 * @source plain geometry: straight taper, elliptical ends; exact by dynamic programming on the steps of the saw-head scale
 * @range as the cut plan
 * @checked 8 of 8 plans worked separately, to 1e-6 board feet
 */
export function cutYield(request: CutRequest): number {
  const job = cutJob(request);
  return PATTERNS[job.pattern](job).total;
}

/** Dogs and log rests stand up from the bed by about so much (common practice, no source). */
const USUAL_DOGS_IN = 1;

/** A blade that nobody kept off the bed. */
function lowBladeWarning({ bedSteps }: CutJob, passes: readonly Pass[]): string[] {
  const lowestIn = Math.min(...passes.map(({ bladeHeightIn }) => bladeHeightIn));
  if (bedSteps > 0 || !(lowestIn < USUAL_DOGS_IN)) return [];
  return [
    `the blade goes down to ${inchesText(lowestIn)} in over the bed: ` +
      "set bed clearance to the lowest height that clears dogs and log rests",
  ];
}
