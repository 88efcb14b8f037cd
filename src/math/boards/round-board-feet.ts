import { IN3_PER_BF } from "../units";
import { talliedThicknessIn } from "./tallied-thickness";

/**
 * Board feet in a slice cut across a log: a round, or an oval with two diameters at right angles.
 *
 * @formula BF = pi / 4 * d1 * d2 * T / 144; d1 = diameter1In; d2 = diameter2In; T = talliedThicknessIn() [in]
 * @source plain geometry
 * @range any size above 0
 */
export function roundBoardFeet({
  diameter1In,
  diameter2In,
  thicknessIn,
}: {
  diameter1In: number;
  diameter2In: number;
  thicknessIn: number;
}): number {
  return ((Math.PI / 4) * diameter1In * diameter2In * talliedThicknessIn(thicknessIn)) / IN3_PER_BF;
}
