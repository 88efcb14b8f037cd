import { NoAnswer } from "../errors";
import { deviation, mean, squaresAboutMean, sumOf } from "../numbers";

/** How far sawn thicknesses stray: standard deviations, in inches. */
export interface SawVariation {
  meanIn: number;
  withinIn: number;
  betweenIn: number;
  totalIn: number;
}

/**
 * Sawing variation from thickness readings, a row a board: how far the saw strays within a board, from board to
 * board, and in all. The total is the deviation of all readings, not the root of the two squares added.
 *
 * @formula withinIn = sqrt(sum(squares(boardsIn)) / (count(all) - count(boardsIn))) [in];
 *   betweenIn = deviation(mean(boardsIn)) [in]; totalIn = deviation(all) [in]; meanIn = mean(all) [in];
 *   all = merged(boardsIn) [in]
 * @source EM 8731, p. 21, Table 3, and p. 22
 * @checked 4 of 4 printed results and 16 of 16 averages and deviations of boards
 * @range two boards or more, two readings or more on each
 */
export function sawVariation({ boardsIn }: { boardsIn: readonly (readonly number[])[] }): SawVariation {
  if (boardsIn.length < 2) throw new NoAnswer(`boards: wanted 2 or more, got ${boardsIn.length}`);
  const short = boardsIn.findIndex((readings) => readings.length < 2);
  if (short >= 0)
    throw new NoAnswer(`readings on board ${short + 1}: wanted 2 or more, got ${boardsIn[short]!.length}`);
  const all = boardsIn.flat();
  const within = sumOf(boardsIn, squaresAboutMean) / (all.length - boardsIn.length);
  return {
    meanIn: mean(all),
    withinIn: Math.sqrt(within),
    betweenIn: deviation(boardsIn.map(mean)),
    totalIn: deviation(all),
  };
}
