import { NoAnswer } from "../errors";

/**
 * Sawing variation from thickness readings, a row a board: how far the saw strays within a board, from board to
 * board, and in all. The total is the deviation of all readings, not the root of the two squares added.
 *
 * @formula SW = sqrt(sum over boards of squares about the board's mean / sum of (readings - 1)); SB = deviation of board means; ST = deviation of all readings
 * @source EM 8731, p. 21, Table 3, and p. 22
 * @checked 4 of 4 printed results and 16 of 16 averages and deviations of boards
 * @range two boards or more, two readings or more on each
 */
export function sawVariation({ boardsIn }: { boardsIn: readonly (readonly number[])[] }): (string | number)[][] {
  if (boardsIn.length < 2) throw new NoAnswer(`boards: wanted 2 or more, got ${boardsIn.length}`);
  const short = boardsIn.findIndex((readings) => readings.length < 2);
  if (short >= 0)
    throw new NoAnswer(`readings on board ${short + 1}: wanted 2 or more, got ${boardsIn[short]!.length}`);
  const all = boardsIn.flat();
  const within = sum(boardsIn.map(squaresAboutMean)) / (all.length - boardsIn.length);
  return [
    ["figure", "inches"],
    ["mean", mean(all)],
    ["within boards", Math.sqrt(within)],
    ["between boards", deviation(boardsIn.map(mean))],
    ["total", deviation(all)],
  ];
}

function deviation(values: readonly number[]): number {
  return Math.sqrt(squaresAboutMean(values) / (values.length - 1));
}

function squaresAboutMean(values: readonly number[]): number {
  const middle = mean(values);
  return sum(values.map((value) => (value - middle) ** 2));
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
