import { mustBeAbove } from "../errors";

/**
 * Money spread over board feet. Nothing spent on nothing is 0, so that a row not yet filled in adds nothing.
 *
 * @formula cost = 0 if money = 0 and boardFeet = 0, else money / boardFeet [a board foot]
 * @source plain arithmetic
 */
export function perFoot(money: number, boardFeet: number): number {
  if (money === 0 && boardFeet === 0) return 0;
  mustBeAbove(0, boardFeet, "board feet");
  return money / boardFeet;
}
