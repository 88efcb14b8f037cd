import { mustBeAbove } from "../errors";

/**
 * What an hour must earn to pay for itself.
 *
 * @formula fixed cost of a period / hours sold in it + variable cost of an hour + wage of an hour
 * @source plain arithmetic
 * @range hours above 0
 */
export function hourlyRate({
  fixedCost,
  hours,
  variablePerHour,
  wagePerHour,
}: {
  fixedCost: number;
  hours: number;
  variablePerHour: number;
  wagePerHour: number;
}): number {
  mustBeAbove(0, hours, "hours");
  return fixedCost / hours + variablePerHour + wagePerHour;
}
