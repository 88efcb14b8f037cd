import { mustBeBetween, NoAnswer } from "../errors";
import type { SpeciesName } from "../wood/species";

/** The one species a whole published schedule was seen for. */
const SCHEDULED: SpeciesName = "Oregon white oak";

/** Boards from 4/4 down; the paper's steps for thicker ones were not seen. */
const THICKEST_IN = 1.125;
const THINNEST_IN = 0.5;

/** A step of a kiln schedule; a stage of drying ends at a moisture, the others when they are done. */
export interface KilnStep {
  stage: "dry" | "equalize" | "condition";
  untilPercent?: number;
  dryBulbF: number;
  wetBulbF: number;
}

/** Stage; moisture at which it ends, percent; dry bulb and wet-bulb depression, degrees Fahrenheit. */
const STAGES = [
  ["dry", 40, 110, 4],
  ["dry", 30, 110, 6],
  ["equalize", undefined, 180, 35],
  ["condition", undefined, 180, 10],
] as const;

/**
 * The steps of a published kiln schedule.
 *
 * @formula by table: the steps of the schedule, each wet bulb its dry bulb less the depression
 * @source Espenas & Kozlik 1975, stages for unseasoned Oregon white oak lumber
 * @range Oregon white oak up to 4/4 rough (1 1/8 in); the abstract goes from the stage ending at 30 % straight to
 *   equalizing
 */
export function kilnSteps({ species, thicknessIn }: { species: SpeciesName; thicknessIn: number }): KilnStep[] {
  if (species !== SCHEDULED)
    throw new NoAnswer(`schedule: a published one was seen for ${SCHEDULED} only, got ${species}`);
  mustBeBetween(THINNEST_IN, THICKEST_IN, thicknessIn, "thickness (in) of the schedule's boards");
  return STAGES.map(([stage, untilPercent, dryBulbF, depressionF]) => ({
    stage,
    untilPercent,
    dryBulbF,
    wetBulbF: dryBulbF - depressionF,
  }));
}
