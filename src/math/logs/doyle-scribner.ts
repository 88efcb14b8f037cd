import { mustBeScalable, type Limits, type Log } from "./log";
import { doyleBoardFeet } from "./doyle";
import { SCRIBNER_LIMITS, scribnerBoardFeet } from "./scribner";
import { wholeInches } from "./table-class";

/** Doyle serves up to this whole inch. */
const LAST_DOYLE_IN = 28;

export const DOYLE_SCRIBNER_LIMITS: Limits = { ...SCRIBNER_LIMITS, rule: "Doyle-Scribner", enteredBy: inWholeInches };

/**
 * Board feet in a log by the Doyle-Scribner combination: Doyle up to 28 inches, Scribner above.
 *
 * The combination joins two tables of whole inches, so the diameter is always taken to the nearest inch: between 28 and
 * 29 in the two rules do not meet. The idea is to take the lower of the two; with the Scribner formula the curves already
 * cross at 24.7 in, so from 25 to 28 in the figure is Doyle's, the higher one.
 *
 * @formula BF = doyleBoardFeet(diameterIn: D) if D <= 28, else scribnerBoardFeet(diameterIn: D);
 *   D = wholeInches() [in]
 * @source metaglossary, Doyle-Scribner
 * @source Louisiana RS 3:4641
 * @source Larsen, the Scribner formula
 * @range D from 4 in, L up to 40 ft, as its parts
 */
export function doyleScribnerBoardFeet(log: Log): number {
  mustBeScalable(log, DOYLE_SCRIBNER_LIMITS);
  const entry = inWholeInches(log);
  return entry.diameterIn <= LAST_DOYLE_IN ? doyleBoardFeet(entry) : scribnerBoardFeet(entry);
}

function inWholeInches({ diameterIn, lengthFt }: Log): Log {
  return { diameterIn: wholeInches(diameterIn), lengthFt };
}
