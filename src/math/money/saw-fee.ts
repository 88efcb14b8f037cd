import { priced } from "./priced";

/**
 * Bill for custom sawing: by the board foot, by the hour, and for blades that hit metal.
 *
 * @formula fee = boardFeet * ratePerBoardFoot + hours * hourlyRate + blades * bladeCost
 * @source plain arithmetic
 * @range an amount of feet, hours or blades needs its price
 */
export function sawFee({
  boardFeet,
  ratePerBoardFoot,
  hours,
  hourlyRate,
  blades,
  bladeCost,
}: {
  boardFeet: number;
  ratePerBoardFoot: number;
  hours: number;
  hourlyRate: number;
  blades: number;
  bladeCost: number;
}): number {
  return (
    priced(boardFeet, ratePerBoardFoot, "board feet") +
    priced(hours, hourlyRate, "hours") +
    priced(blades, bladeCost, "blades")
  );
}
