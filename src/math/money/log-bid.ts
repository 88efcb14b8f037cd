import { shareLeft } from "./share";

/**
 * The most to pay for a log: what its lumber sells for, less the margin on the sales and less the costs.
 * Below 0 the log is worth taking only for at least that much money.
 *
 * @formula bid = yieldBoardFeet * price * shareLeft(takenPercent: marginPercent) - costs
 * @source Wengert 2001: 768 of lumber less 395 for the logs leaves 373, less 100 for sawing leaves 273
 * @source plain arithmetic
 * @range margin from 0 and under 100 %
 * @checked 1 of 1 printed example (273)
 */
export function logBid({
  yieldBoardFeet,
  price,
  costs,
  marginPercent,
}: {
  yieldBoardFeet: number;
  price: number;
  costs: number;
  marginPercent: number;
}): number {
  return yieldBoardFeet * price * shareLeft(marginPercent, "margin on the sales (percent)") - costs;
}
