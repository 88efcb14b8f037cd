import { slingLegLb } from "../../../../src/math/haul/sling";
import { tiedownCount } from "../../../../src/math/haul/tiedowns";
import { tongueSharePercent } from "../../../../src/math/haul/tongue";
import { degreesOf } from "./angles";

export const LOADS = {
  sling_factor: (angleDegrees: number) => slingLegLb({ weightLb: 2, angleDegrees, legs: 2 }),
  sling_leg: (weightLb: number, legs: number, angleDegrees: number) => slingLegLb({ weightLb, legs, angleDegrees }),
  /** A leg's rating brought down by the height of the hook over the length of the leg: what loads the leg to its rating. */
  reduced_cap: (rating: number, height: number, length: number) =>
    rating / slingLegLb({ weightLb: 2, angleDegrees: degreesOf(Math.asin(height / length)) }),
  tiedown_count: (lengthFt: number, weightLb: number) => tiedownCount({ weightLb, lengthFt, limitLb: 1e6 }),
  /** The pounds on the hitch that make so many percent of the trailer's weight. */
  pct: (weightLb: number, percent: number) =>
    (weightLb * tongueSharePercent({ loads: [{ weightLb, positionFt: percent }], hitchFt: 100 })) / 100,
};
