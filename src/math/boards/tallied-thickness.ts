/** Stock thinner than this is counted as this thick, in inches. */
const THINNEST_TALLIED_IN = 1;

/**
 * The thickness that board feet are counted on: its own, or 1 in for thinner stock.
 *
 * @formula T = the larger of 1 in and the thickness
 * @source Household Discoveries, Lumber and Board Measure: 1 in or thinner is sold as surface measure
 */
export function talliedThicknessIn(thicknessIn: number): number {
  return Math.max(THINNEST_TALLIED_IN, thicknessIn);
}
