import { mustBeAbove } from "../errors";
import { shareLeft } from "./share";

/**
 * Price that leaves a margin, the margin being a share of the price and not a markup on the cost.
 *
 * @formula price = cost / shareLeft(takenPercent: marginPercent)
 * @source plain arithmetic
 * @range margin from 0 and under 100 %
 */
export function listPrice({ cost, marginPercent }: { cost: number; marginPercent: number }): number {
  return cost / shareLeft(marginPercent, "margin on the price (percent)");
}

/**
 * Share of a price that is left after the cost, below 0 when sold at a loss.
 *
 * @formula margin = (price - cost) / price [share]
 * @source plain arithmetic
 * @range price above 0
 */
export function marginShare({ price, cost }: { price: number; cost: number }): number {
  mustBeAbove(0, price, "price");
  return (price - cost) / price;
}
