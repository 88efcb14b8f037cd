import { mustBeAbove, mustBeAtLeast } from "../errors";
import { mustBeKerf } from "./kerf";
import { SLACK } from "../rounding";

/**
 * Pieces of one thickness from a depth of wood, the last one needing no kerf under it.
 *
 * @formula n = floor((depthIn + k) / (t + k) + 0.000001) [pieces]; t = thicknessIn; k = kerfIn
 * @source plain arithmetic
 * @checked 2 of 2 printed depths for 12 boards (16.6 and 15.2 in, Wengert 2000)
 * @range thickness above 0, kerf 0 to 3/4 in
 */
export function pieceCount(sizes: { depthIn: number; thicknessIn: number; kerfIn: number }): number {
  mustBeAtLeast(0, sizes.depthIn, "depth (in)");
  mustBeAbove(0, sizes.thicknessIn, "thickness (in)");
  mustBeKerf(sizes.kerfIn);
  return Math.floor((sizes.depthIn + sizes.kerfIn) / (sizes.thicknessIn + sizes.kerfIn) + SLACK);
}
