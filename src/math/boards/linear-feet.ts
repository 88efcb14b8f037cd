import { mustBeAbove } from "../errors";
import { IN_PER_FT } from "../units";
import { talliedThicknessIn } from "./tallied-thickness";

/**
 * Running feet of one width and thickness that hold the given board feet: the inverse of the board foot.
 *
 * @formula L = 12 * BF / (T * W) [ft]; BF = boardFeet [board feet]; W = widthIn; T = talliedThicknessIn() [in]
 * @source plain arithmetic
 * @range width above 0
 */
export function linearFeet({
  boardFeet,
  thicknessIn,
  widthIn,
}: {
  boardFeet: number;
  thicknessIn: number;
  widthIn: number;
}): number {
  mustBeAbove(0, widthIn, "width (in)");
  return (boardFeet * IN_PER_FT) / (talliedThicknessIn(thicknessIn) * widthIn);
}
