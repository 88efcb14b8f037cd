import { NoAnswer } from "../errors";

/**
 * Bill for custom sawing: by the board foot, by the hour, and for blades that hit metal.
 *
 * @formula BF * rate + hours * hourly + blades * blade cost
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

/** Work without a price would be given away in silence. */
function priced(amount: number, price: number, what: string): number {
  if (amount !== 0 && price === 0) throw new NoAnswer(`${what}: wanted a price for each, got ${amount} and no price`);
  return amount * price;
}
