import { shareLeft } from "./share";

/** What a tally loses in the kiln when nothing better is known, in percent. */
export const KILN_LOSS_PERCENT = 7;

/**
 * Board feet that a green tally is likely to measure after kiln drying. A forecast: the bill goes by a new tally.
 *
 * @formula BF = greenBoardFeet * shareLeft(takenPercent: shrinkagePercent)
 * @source Atherholt 2001: 7 % by default, 5 to 9 % met
 * @range shrinkage from 0 and under 100 %
 * @checked 1 of 1 printed example (1000 green, 7 %: 930)
 */
export function driedBoardFeet({
  greenBoardFeet,
  shrinkagePercent,
}: {
  greenBoardFeet: number;
  shrinkagePercent: number;
}): number {
  return greenBoardFeet * shareLeft(shrinkagePercent, "shrinkage (percent)");
}
