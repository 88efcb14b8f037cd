import { apart, NoAnswer, short } from "../errors";
import { hairOver } from "../rounding";

/**
 * Board feet to sell before the fixed cost of a period is earned.
 *
 * @formula BF = fixedCost / (pricePerFoot - variablePerFoot) [board feet]
 * @source plain arithmetic
 * @range price above the variable cost: else no amount is enough
 */
export function breakEvenFeet({
  fixedCost,
  pricePerFoot,
  variablePerFoot,
}: {
  fixedCost: number;
  pricePerFoot: number;
  variablePerFoot: number;
}): number {
  if (!(pricePerFoot > hairOver(variablePerFoot)))
    throw new NoAnswer(
      `price per board foot: wanted more than the variable cost of ${short(variablePerFoot)}, got ${apart(pricePerFoot, variablePerFoot)}: every foot loses money`,
    );
  return fixedCost / (pricePerFoot - variablePerFoot);
}
