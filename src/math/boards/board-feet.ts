import { IN_PER_FT } from "../units";
import { talliedThicknessIn } from "./tallied-thickness";

/**
 * Board feet in boards of one size, unrounded.
 *
 * @formula BF = T * W / 12 * L * count; W = widthIn; L = lengthFt; T = talliedThicknessIn() [in]
 * @source Handbook 130, 2.12: a board foot is 144 cubic inches
 * @range any size above 0
 * @checked 12 of 12 printed examples; Bailey prints one of them, 24, as .24, a fault of the type
 */
export function boardFeet({
  thicknessIn,
  widthIn,
  lengthFt,
  count,
}: {
  thicknessIn: number;
  widthIn: number;
  lengthFt: number;
  count: number;
}): number {
  return ((talliedThicknessIn(thicknessIn) * widthIn) / IN_PER_FT) * lengthFt * count;
}
