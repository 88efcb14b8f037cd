import { perFoot } from "./per-foot";
import { priced } from "./priced";
import { shareLeft } from "./share";

/**
 * What a board foot that can be sold has cost, all money on the log divided by the feet left after waste.
 *
 * @formula cost = perFoot(money: spent, boardFeet: sold) [a board foot];
 *   spent = logCost + haul + hours * ratePerHour + drying;
 *   sold = boardFeet * shareLeft(takenPercent: wastePercent) [board feet]
 * @source plain arithmetic
 * @range board feet above 0, hours with a rate; waste from 0 and under 100 %; the log's cost below 0 where you were paid to take it
 * @checked 3 of 3 printed examples; a fourth, 1.38 with 11.5 % short, is 1.5593 where print has 1.54
 */
export function boardCost({
  logCost,
  haul,
  hours,
  ratePerHour,
  drying,
  boardFeet,
  wastePercent,
}: {
  logCost: number;
  haul: number;
  hours: number;
  ratePerHour: number;
  drying: number;
  boardFeet: number;
  wastePercent: number;
}): number {
  const soldFeet = boardFeet * shareLeft(wastePercent, "waste (percent)");
  return perFoot(logCost + haul + priced(hours, ratePerHour, "hours") + drying, soldFeet);
}
