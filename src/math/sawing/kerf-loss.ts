import { mustBeAbove } from "../errors";
import { mustBeKerf } from "./kerf";

/**
 * Share of the wood that the saw turns into dust, in the middle of a stack of equal boards.
 *
 * @formula loss = k / (t + k)
 * @source plain arithmetic: every board takes its own thickness and one kerf
 * @range thickness above 0, kerf 0 to 3/4 in, where nothing is lost
 */
export function kerfLossShare({ thicknessIn, kerfIn }: { thicknessIn: number; kerfIn: number }): number {
  mustBeAbove(0, thicknessIn, "thickness (in)");
  mustBeKerf(kerfIn);
  return kerfIn / (thicknessIn + kerfIn);
}
