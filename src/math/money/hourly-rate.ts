import { mustBeAbove } from "../errors";

/**
 * What an hour must earn to pay for itself.
 *
 * @formula rate = fixedCost / hours + variablePerHour + wagePerHour [an hour]
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
