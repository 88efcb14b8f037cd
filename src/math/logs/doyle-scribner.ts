import { mustBeALog, type Log } from "./log";
import { doyleBoardFeet } from "./doyle";
import { scribnerBoardFeet } from "./scribner";
import { wholeInches } from "./table-class";

/** Doyle serves up to this whole inch. */
const LAST_DOYLE_IN = 28;
const SMALLEST_IN = 4;
const LONGEST_FT = 40;

/**
 * Board feet in a log by the Doyle-Scribner combination: Doyle up to 28 inches, Scribner above.
 *
 * The combination joins two tables of whole inches, so the diameter is always taken to the nearest inch: between 28 and
 * 29 in the two rules do not meet. The idea is to take the lower of the two; with the Scribner formula the curves already
 * cross at 24.7 in, so from 25 to 28 in the figure is Doyle's, the higher one.
 *
 * @formula Doyle for D up to 28 in, the Scribner formula from 29 in; D to the nearest inch, an exact half dropped
 * @source metaglossary, Doyle-Scribner
 * @source Louisiana RS 3:4641
 * @source Larsen, the Scribner formula
 * @range D from 4 in, L up to 40 ft, as its parts
 */
export function doyleScribnerBoardFeet({ diameterIn, lengthFt }: Log): number {
  const log = { diameterIn: wholeInches(diameterIn), lengthFt };
  mustBeALog(log, "Doyle-Scribner", SMALLEST_IN, LONGEST_FT);
  return log.diameterIn <= LAST_DOYLE_IN ? doyleBoardFeet(log) : scribnerBoardFeet(log);
}
