import { mustBeAbove } from "../errors";

/**
 * Cost of hauling, per board foot brought home.
 *
 * @formula (miles * cost per mile + hours * rate) / BF
 * @source plain arithmetic
 * @range board feet above 0
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
  mustBeAbove(0, boardFeet, "board feet");
  return (miles * costPerMile + hours * ratePerHour) / boardFeet;
}
