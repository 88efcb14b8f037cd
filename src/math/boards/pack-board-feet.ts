import { mustBeBetween } from "../errors";
import { IN_PER_FT } from "../units";
import { talliedThicknessIn } from "./tallied-thickness";

/** No bundle is emptier (common practice, no source). */
const LEAST_FILL_PCT = 10;

/**
 * Board feet in a bundle from its outside width and length and its layers: a count to check a bill by, not a tally.
 *
 * @formula BF = W / 12 * L * layers * T * fillPercent / 100; W = widthIn; L = lengthFt; T = talliedThicknessIn() [in]
 * @source FDMC Shortages, a layer 48 in wide and 10 ft long holds 40 board feet
 * @source common practice, no source: the fill, which allows for gaps between boards
 * @range fill 10 to 100 %: less is a slip, such as 1.1 for 110 %
 * @checked 1 of 1 printed example (a layer 48 in by 10 ft: 40)
 */
export function packBoardFeet({
  widthIn,
  lengthFt,
  layers,
  thicknessIn,
  fillPercent,
}: {
  widthIn: number;
  lengthFt: number;
  layers: number;
  thicknessIn: number;
  fillPercent: number;
}): number {
  mustBeBetween(LEAST_FILL_PCT, 100, fillPercent, "fill (percent)");
  return (widthIn / IN_PER_FT) * lengthFt * layers * talliedThicknessIn(thicknessIn) * (fillPercent / 100);
}
