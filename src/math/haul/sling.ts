import { mustBeBetween, NoAnswer } from "../errors";

/** Below this the pull runs away; rigging tables stop here. */
const FLATTEST_DEGREES = 30;
/** Three or four legs never share a stiff load evenly unless something makes them. */
export const LEGS_SURE_TO_CARRY = 2;

/**
 * Pull in one leg of a sling, by the angle between the leg and the horizontal.
 *
 * @formula T = W / (n * sin(A * deg)); W = weightLb; A = angleDegrees; n = l if shared, else min(l, 2) [legs];
 *   l = legs or 2 [legs]
 * @source ASME B30.9: the table of sling angle factors
 * @range 30 to 90 degrees from the horizontal; 1 to 4 legs, one of them only plumb
 * @checked 13 of 13 angles of the table, 8 of 8 printed examples
 */
export function slingLegLb({ weightLb, angleDegrees, legs = LEGS_SURE_TO_CARRY, shared = false }: SlingLeg): number {
  mustBeBetween(FLATTEST_DEGREES, 90, angleDegrees, "sling angle from the horizontal (degrees)");
  mustBeBetween(1, 4, legs, "sling legs");
  if (legs === 1 && angleDegrees !== 90)
    throw new NoAnswer(`sling angle of a single leg (degrees): wanted 90, for it hangs plumb, got ${angleDegrees}`);
  const carrying = shared ? legs : Math.min(legs, LEGS_SURE_TO_CARRY);
  return weightLb / (carrying * Math.sin((angleDegrees * Math.PI) / 180));
}

interface SlingLeg {
  weightLb: number;
  angleDegrees: number;
  legs?: number | undefined;
  /** True where equalizing gear or the load's give makes every leg carry its part. */
  shared?: boolean | undefined;
}
