import { exactSurfaceFt2 } from "./surface-measure";
import { talliedThicknessIn } from "./tallied-thickness";
import { isExactHalf, nearestWholeFoot } from "./whole-feet";

/** Which way exact half square feet go in a tally. */
type Halves = "down" | "alternate";

interface Board {
  widthIn: number;
  lengthFt: number;
}

/**
 * Board feet of many boards of one thickness, tallied piece by piece.
 *
 * @formula BF = T * sum(SM); SM = halfdown(A) + half * odd if halves = "alternate", else halfdown(A) [ft2];
 *   A = boards.widthIn * down(boards.lengthFt) / 12 [ft2]; half = nearest(A) - halfdown(A) [exact halves];
 *   odd = before(half) - 2 * floor(before(half) / 2) [after an odd number]; T = talliedThicknessIn() [in]
 * @source Handbook 130, 2.12: surface measure of each piece, halves down (our reading, as for surface measure)
 * @source King Elements of Woodwork, measuring boards: exact halves down and up by turns on different boards
 * @source Hardwood terminology, the order of rounding: each piece first, then the sum, then the thickness
 * @range each length 1 ft and up
 * @checked 1 of 1 printed example, and one whose printed answer is cut off (two boards 8 1/2 in by 12 ft, read as 17)
 */
export function tallyBoardFeet({
  boards,
  thicknessIn,
  halves,
}: {
  boards: readonly Board[];
  thicknessIn: number;
  halves: Halves;
}): number {
  return totalSurfaceFt2(boards, halves) * talliedThicknessIn(thicknessIn);
}

/** By turns, the first exact half of the list goes down, the next up, and so on. */
function totalSurfaceFt2(boards: readonly Board[], halves: Halves): number {
  let total = 0;
  let turnIsUp = false;
  for (const [at, board] of boards.entries()) {
    const exactFt2 = exactSurfaceFt2(board, `board ${at + 1} of the list`);
    total += nearestWholeFoot(exactFt2, turnIsUp ? "up" : "down");
    if (halves === "alternate" && isExactHalf(exactFt2)) turnIsUp = !turnIsUp;
  }
  return total;
}
