import { mustBeAtLeast } from "../errors";
import { downTo } from "../rounding";
import { IN_PER_FT } from "../units";
import { nearestWholeFoot } from "./whole-feet";

/**
 * Surface measure of a board: the square feet of its face, to the whole foot.
 *
 * @formula SM = d if halves = "down", d if d = 2 * floor(d / 2), else nearest(A); d = halfdown(A) [ft2];
 *   A = exactSurfaceFt2() [ft2]
 * @source Handbook 130, 2.12: full width, standard length, nearest square foot; that a half is dropped is our reading of a sentence cut short in the copy
 * @source AHEC measurement, length down to the whole foot
 * @source common practice, no source: halves to the even foot
 * @range length 1 ft and up
 * @checked 6 of 6 printed examples
 */
export function surfaceMeasureFt2({
  widthIn,
  lengthFt,
  halves,
}: {
  widthIn: number;
  lengthFt: number;
  /** Which way an exact half square foot goes. */
  halves: "down" | "even";
}): number {
  return nearestWholeFoot(exactSurfaceFt2({ widthIn, lengthFt }), halves);
}

/**
 * Square feet of a board's face before it is brought to the whole foot, on the whole feet of its length.
 *
 * @formula A = widthIn * down(lengthFt) / 12
 * @source plain arithmetic
 */
export function exactSurfaceFt2(
  { widthIn, lengthFt }: { widthIn: number; lengthFt: number },
  which = "the board",
): number {
  const wholeFeet = downTo(1, lengthFt);
  mustBeAtLeast(1, Math.max(wholeFeet, lengthFt), `length of ${which} (ft)`);
  return (widthIn * wholeFeet) / IN_PER_FT;
}
