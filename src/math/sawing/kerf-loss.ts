import { mustBeAbove } from "../errors";
import { mustBeKerf } from "./kerf";

/**
 * Share of the wood that the saw turns into dust, in the middle of a stack of equal boards.
 *
 * @formula loss = k / (t + k); t = thicknessIn; k = kerfIn
 * @source plain arithmetic: every board takes its own thickness and one kerf
 * @range thickness above 0, kerf from 0, where nothing is lost, to 3/4 in
 */
export function kerfLossShare({ thicknessIn, kerfIn }: { thicknessIn: number; kerfIn: number }): number {
  mustBeAbove(0, thicknessIn, "thickness (in)");
  mustBeKerf(kerfIn);
  return kerfIn / (thicknessIn + kerfIn);
}
