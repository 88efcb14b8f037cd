import { cantFits, sawCant } from "./cant";
import { isPithLevel, type CutJob, type Pattern } from "./cut-job";
import { cutJob, readRequest, type CutRequest } from "./cut-request";
import { sawLive } from "./live";
import type { Plan, Sawn, WhyNone } from "./plan";
import { guidesWarning, lowBladeWarning } from "./plan-warning";
import { sawQuarters } from "./quarter";
import { sawTimber } from "./timber";
import { sawSlabs } from "./slab";
import { yieldBounds } from "./yield-bounds";

const PATTERNS: Readonly<Record<Pattern, (job: CutJob) => Sawn>> = {
  live: sawLive,
  slab: sawSlabs,
  cant: sawCant,
  quarter: sawQuarters,
  timber: sawTimber,
};

/**
 * The sawing plan of a log with the greatest board feet, or money.
 *
 * @formula by dynamic program: the greatest total, f(j) is the greatest of V + f(j - t - k) over the products, and
 *   the blade stands at the lower face of a board less the kerf
 * @source plain geometry: straight taper, elliptical ends, boards square-edged; exact by dynamic programming on the steps of the saw-head scale
 * @range a log up to 300 in and 300 ft whose butt goes between the blade guides, or does after flats; up to about 4 million cuts to weigh
 * @checked 8 of 8 plans worked separately, to 1e-6 board feet; 910 of 910 small logs against a search of everything; all boards inside 670 random logs and a kerf apart; live sawing 0 to 21 % over 85 printed cells of the International 1/4 rule from 10 in up
 */
export function planCut(request: CutRequest): Plan {
  const { job, warnings } = readRequest(request);
  const sawn = PATTERNS[job.pattern](job);
  return {
    job,
    ...sawn,
    ...yieldBounds(job),
    shimIn: shimUnderSmallEndIn(job),
    whyNone: sawn.passes.length === 0 ? whyNone(job) : undefined,
    warnings: [...warnings, ...guidesWarning(job), ...lowBladeWarning(job, sawn.passes)],
  };
}

/**
 * What the best cut plan of a log gives: board feet, or money where the objective is value.
 *
 * @formula by dynamic program: the total of the plan that CUTPLAN answers, the greatest sum of V over stacks of
 *   boards a kerf apart
 * @source plain geometry: straight taper, elliptical ends; exact by dynamic programming on the steps of the saw-head scale
 * @range as the cut plan
 * @checked 8 of 8 plans worked separately, to 1e-6 board feet
 */
export function cutYield(request: CutRequest): number {
  const job = cutJob(request);
  return PATTERNS[job.pattern](job).total;
}

/** The pith of a straight log lies level when its small end is raised by half of what its two ends differ by. */
function shimUnderSmallEndIn({ log, lies, pattern, sweep }: CutJob): number {
  const level = lies === "split" || isPithLevel(pattern);
  return level && !sweep ? (log.taperInPerIn * log.lengthIn) / 2 : 0;
}

/** Why a log holds no board: a setting that alone forbids them all, or else the products. */
function whyNone(job: CutJob): WhyNone {
  if (job.lengthsFt.length === 0) return "lengths";
  if (job.pattern !== "slab" && job.pattern !== "timber" && job.widths.length === 0) return "widths";
  if (job.pattern === "cant" && !job.cantWidths.some((width) => cantFits(job, width))) return "cant widths";
  return job.pattern === "timber" ? "timber" : "products";
}
