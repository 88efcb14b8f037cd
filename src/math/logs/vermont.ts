import { mustBeScalable, type Limits, type Log } from "./log";
import { wholeInches } from "./table-class";

export const VERMONT_LIMITS: Limits = {
  rule: "Vermont",
  smallestIn: 1,
  /** The statute gives the rule for 12 ft. */
  longestFt: 12,
  lengthAdvice: "the statute scales a longer log in 12-ft sections from the upper end, each by its own diameter",
};

/**
 * Board feet in a log by the Vermont rule.
 *
 * @formula BF = D^2 * L / 24; D = diameterIn; L = lengthFt
 * @source 9 VSA 2693
 * @range up to 12 ft: a longer log is measured and scaled in 12-ft sections from the upper end
 * @checked 111 of 111 sums of the statute's D x D/2 for 8, 10 and 12 ft, 4 to 40 in
 */
export function vermontBoardFeet({ diameterIn, lengthFt }: Log): number {
  mustBeScalable({ diameterIn, lengthFt }, VERMONT_LIMITS);
  return (diameterIn ** 2 * lengthFt) / 24;
}

/**
 * Board feet in a log by the Vermont rule with the statute's whole inches.
 *
 * @formula BF = vermontBoardFeet(diameterIn: wholeInches())
 * @source 9 VSA 2693
 */
export function vermontTableBoardFeet({ diameterIn, lengthFt }: Log): number {
  return vermontBoardFeet({ diameterIn: wholeInches(diameterIn), lengthFt });
}
