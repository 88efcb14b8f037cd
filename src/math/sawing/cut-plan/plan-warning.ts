import type { CutJob, Pattern } from "./cut-job";
import type { CutSettings } from "./cut-settings";
import { guidesAreNarrow } from "./guides";
import type { Pass } from "./plan";
import { isPithLevel, widestIn } from "./cut-job";
import { greenSizeIn, type ProductRow } from "./products";
import { nearestSteps } from "./scale-steps";

/** What a sawyer should know of a plan before sawing by it. */
export type PlanWarning =
  /** A size was taken to the nearest whole step of the scale. */
  | { code: "rounded"; what: Rounded; givenIn: number; takenIn: number }
  /** The log was said to lie flat, but this pattern is planned with its pith level. */
  | { code: "pith level"; pattern: Pattern }
  /** The log was said to be oval, but quarters are planned on a round one. */
  | { code: "round quarters" }
  /** Turned over on its flat, the log is cut at the cant's width above the bed, which the blade does not reach. */
  | { code: "cant under the blade"; lowestIn: number }
  /** A quarter is cut at the board's thickness above the bed, which the blade does not reach. */
  | { code: "quarters under the blade"; lowestIn: number }
  /** Something has to be done with another saw before the log goes between the guides. */
  | { code: "guides"; pattern: Pattern; buttIn: number; openingIn: number }
  /** No bed clearance was given, and the blade comes down to where dogs usually stand. */
  | { code: "low blade"; lowestIn: number };

/** A size that is taken to the nearest whole step. */
type Rounded = "kerf" | "rip kerf" | "first cut" | "green size" | "side of the timber";

/** A size given in metric units differs from its inches by less than this, which no scale shows. */
const FELT_IN = 1e-6;

/** What was asked, before it was rounded to the scale. */
interface Asked {
  kerfIn: number;
  ripKerfIn: number;
  products: readonly ProductRow[];
  settings: Partial<CutSettings>;
}

/** Sizes that were rounded to the scale, and inputs that the pattern takes in another way. */
export function warningsAbout(job: CutJob, { kerfIn, ripKerfIn, products, settings }: Asked): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  const check = (what: Rounded, givenIn: number) => {
    const takenIn = nearestSteps(givenIn, job.stepIn) * job.stepIn;
    if (Math.abs(takenIn - givenIn) > FELT_IN) warnings.push({ code: "rounded", what, givenIn, takenIn });
  };
  check("kerf", kerfIn);
  if (job.rip && ripKerfIn !== kerfIn) check("rip kerf", ripKerfIn);
  if (job.firstCutSteps !== undefined) check("first cut", settings["first cut"]!);
  for (const greenIn of new Set(products.map(greenSizeIn))) check("green size", greenIn);
  if (job.pattern === "timber") for (const { nominalIn } of job.timber ?? []) check("side of the timber", nominalIn);
  if (job.lies === "flat" && isPithLevel(job.pattern)) warnings.push({ code: "pith level", pattern: job.pattern });
  if (job.pattern === "quarter" && job.log.smallAcrossIn !== job.log.smallUpIn)
    warnings.push({ code: "round quarters" });
  return [...warnings, ...bedWarnings(job)];
}

function bedWarnings({ pattern, bedSteps, stepIn, cantWidths, timber, products }: CutJob): PlanWarning[] {
  const lowestIn = bedSteps * stepIn;
  const isUnder = ({ greenSteps }: { greenSteps: number }) => greenSteps < bedSteps;
  if ((pattern === "cant" && cantWidths.some(isUnder)) || (pattern === "timber" && timber?.some(isUnder)))
    return [{ code: "cant under the blade", lowestIn }];
  if (pattern === "quarter" && products.some(isUnder)) return [{ code: "quarters under the blade", lowestIn }];
  return [];
}

/** What has to be done with another saw, or in another place, before a log goes between the guides. */
export function guidesWarning(job: CutJob): PlanWarning[] {
  if (!guidesAreNarrow(job)) return [];
  return [{ code: "guides", pattern: job.pattern, buttIn: widestIn(job.log), openingIn: job.guideOpeningIn! }];
}

/** Dogs and log rests stand up from the bed by about so much (common practice, no source). */
const USUAL_DOGS_IN = 1;

/** A blade that comes down among the dogs because no bed clearance was given. */
export function lowBladeWarning({ bedSteps }: CutJob, passes: readonly Pick<Pass, "bladeHeightIn">[]): PlanWarning[] {
  const lowestIn = Math.min(...passes.map(({ bladeHeightIn }) => bladeHeightIn));
  return bedSteps > 0 || !(lowestIn < USUAL_DOGS_IN) ? [] : [{ code: "low blade", lowestIn }];
}
