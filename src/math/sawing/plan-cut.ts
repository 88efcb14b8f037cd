import { sawCant } from "./cant";
import { widestIn, type CutJob, type Pattern } from "./cut-job";
import { cutJob, type CutRequest } from "./cut-request";
import { inchesText } from "./inches-text";
import { sawLive } from "./live";
import type { Plan, Sawn } from "./plan";
import { sawQuarters } from "./quarter";
import { NEAR_IN } from "./scale-steps";
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
  return { job, ...sawn, ...yieldBounds(job), warnings: [...job.warnings, ...flatsWarning(job)] };
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

function flatsWarning({ pattern, log, guideOpeningIn }: CutJob): string[] {
  if (pattern === "quarter" || guideOpeningIn === undefined || widestIn(log) <= guideOpeningIn + NEAR_IN) return [];
  return [
    `the butt is ${inchesText(widestIn(log))} in and the guides open ${inchesText(guideOpeningIn)} in: ` +
      "take flats off both sides first, until the log goes between them",
  ];
}
