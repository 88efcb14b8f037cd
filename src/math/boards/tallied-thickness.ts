/** Stock thinner than this is counted as this thick, in inches. */
const THINNEST_TALLIED_IN = 1;

/**
 * The thickness that board feet are counted on: its own, or 1 in for thinner stock.
 *
 * @formula T = max(1, thicknessIn)
 * @source common practice, no source of authority: an old household book has it, for boards (Household Discoveries, Lumber
 *   and Board Measure)
 */
export function talliedThicknessIn(thicknessIn: number): number {
  return Math.max(THINNEST_TALLIED_IN, thicknessIn);
}
