import { mustBeAbove, mustBeAtLeast, mustBeBetween } from "../errors";
import { NEAR } from "../rounding";
import { mustBeKerf } from "./kerf";

/** No log gives so many boards. A larger count was mistyped. */
const MOST_BOARDS = 1000;

/** Where the blade stands for a pass, and how far it came down for it; the first pass frees no board. */
export interface HeadHeight {
  bladeHeightIn: number;
  dropIn?: number;
}

/**
 * Saw-head settings down from a first cut: each board takes its thickness and one kerf off the height.
 * The height is that of the blade's lower side, which is the sawn face left on the log.
 *
 * @formula bladeHeightIn = startIn - n * (t + k); n = steps(0, boards + 1, 1);
 *   boards = min(count, floor((startIn - (bedIn or 0) + 0.000000001) / (t + k))); t = thicknessIn; k = kerfIn
 * @source plain arithmetic
 * @range thickness above 0, kerf 0 to 3/4 in, 1 to 1000 boards
 */
export function headHeights({
  startIn,
  thicknessIn,
  kerfIn,
  count,
  bedIn = 0,
}: {
  startIn: number;
  thicknessIn: number;
  kerfIn: number;
  count: number;
  bedIn?: number;
}): HeadHeight[] {
  mustBeAtLeast(bedIn, startIn, "first cut above the lowest setting (in)");
  mustBeAbove(0, thicknessIn, "thickness (in)");
  mustBeKerf(kerfIn);
  mustBeBetween(1, MOST_BOARDS, count, "boards");
  const dropIn = thicknessIn + kerfIn;
  // The binary fractions of a decimal kerf may put a last cut on the bed line a hair under it.
  const boards = Math.min(count, Math.floor((startIn - bedIn + NEAR) / dropIn));
  const drops = Array.from({ length: boards }, (_, n) => ({ bladeHeightIn: startIn - (n + 1) * dropIn, dropIn }));
  return [{ bladeHeightIn: startIn }, ...drops];
}
