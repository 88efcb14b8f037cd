import { mustBeAbove } from "../errors";

/** Money spread over board feet. Nothing spent on nothing is 0, so that a row not yet filled in adds nothing. */
export function perFoot(money: number, boardFeet: number): number {
  if (money === 0 && boardFeet === 0) return 0;
  mustBeAbove(0, boardFeet, "board feet");
  return money / boardFeet;
}
