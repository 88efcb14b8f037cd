import { mustBeAbove, mustBeAtLeast } from "../errors";

/**
 * Share of the wood that the saw turns into dust, in the middle of a stack of equal boards.
 *
 * @formula loss = k / (t + k)
 * @source plain arithmetic: every board takes its own thickness and one kerf
 * @range thickness above 0, kerf from 0, where nothing is lost
 */
export function kerfLossShare({ thicknessIn, kerfIn }: { thicknessIn: number; kerfIn: number }): number {
  mustBeAbove(0, thicknessIn, "thickness (in)");
  mustBeAtLeast(0, kerfIn, "kerf (in)");
  return kerfIn / (thicknessIn + kerfIn);
}
