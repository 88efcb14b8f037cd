import { mustBeScalable, type Limits, type Log } from "./log";

/** The standard log, or market: 19 inches at the small end, 13 feet long. */
const MARKET = { diameterIn: 19, lengthFt: 13 };
/** Five markets to the thousand. */
const MARKET_BF = 200;

export const ADIRONDACK_LIMITS: Limits = { rule: "Adirondack", smallestIn: 1 };

/**
 * Board feet in a log by the Adirondack standard, or market: a log 19 inches by 13 feet is 200 board feet.
 *
 * @formula BF = 200 * D^2 * L / (19^2 * 13); D = diameterIn; L = lengthFt
 * @source Freese 1973, Adirondack standard: 200 board feet
 * @source Adirondack Almanack, log marks: 19 in by 13 ft, five markets to 1,000 board feet
 * @source from memory: other sizes in proportion to D^2 L
 * @range D from 1 in
 */
export function adirondackBoardFeet({ diameterIn, lengthFt }: Log): number {
  mustBeScalable({ diameterIn, lengthFt }, ADIRONDACK_LIMITS);
  return (MARKET_BF * diameterIn ** 2 * lengthFt) / (MARKET.diameterIn ** 2 * MARKET.lengthFt);
}
