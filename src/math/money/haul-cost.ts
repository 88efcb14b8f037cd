import { perFoot } from "./per-foot";
import { priced } from "./priced";

/**
 * Cost of hauling, per board foot brought home.
 *
 * @formula cost = perFoot(money: spent) [a board foot]; spent = miles * costPerMile + hours * ratePerHour
 * @source plain arithmetic
 * @range board feet above 0; miles and hours with their rates
 */
export function haulCostPerFoot({
  miles,
  costPerMile,
  hours,
  ratePerHour,
  boardFeet,
}: {
  miles: number;
  costPerMile: number;
  hours: number;
  ratePerHour: number;
  boardFeet: number;
}): number {
  return perFoot(priced(miles, costPerMile, "miles") + priced(hours, ratePerHour, "hours"), boardFeet);
}
