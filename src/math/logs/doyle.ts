import { mustBeScalable, type Limits, type Log } from "./log";
import { nearest } from "../rounding";
import { LENGTH_CLASS_FT, tableClass } from "./table-class";

/** What Doyle takes off the diameter for slabs and edgings, in inches. */
const SLAB_ALLOWANCE_IN = 4;

export const DOYLE_LIMITS: Limits = { rule: "Doyle", smallestIn: SLAB_ALLOWANCE_IN };

/**
 * Board feet in a log by the Doyle rule.
 *
 * @formula BF = ((D - 4) / 4)^2 * L; D = diameterIn; L = lengthFt
 * @source Louisiana RS 3:4641
 * @range D from 4 in, where the rule gives 0; below that the square would rise again
 */
export function doyleBoardFeet({ diameterIn, lengthFt }: Log): number {
  mustBeScalable({ diameterIn, lengthFt }, DOYLE_LIMITS);
  return ((diameterIn - SLAB_ALLOWANCE_IN) / 4) ** 2 * lengthFt;
}

/**
 * Board feet in a log as printed Doyle tables have it.
 *
 * @formula BF = nearest(doyleBoardFeet(diameterIn: D, lengthFt: L)); D = wholeInches() [in];
 *   L = down(lengthFt, 2) [ft]
 * @source Doyle table, printed, 8 to 36 in by 8 to 20 ft
 * @source Chase 1913, p. 11, which rounds exact halves now up, now down
 * @range beyond the printed sizes the formula goes on with the same rounding
 * @checked 105 of 105 cells of the modern Doyle table; 344 of 353 readable cells of Chase 1913, exact halves either way
 */
export function doyleTableBoardFeet(log: Log): number {
  mustBeScalable(log, { ...DOYLE_LIMITS, shortestFt: LENGTH_CLASS_FT, enteredBy: tableClass });
  return nearest(1, doyleBoardFeet(tableClass(log)));
}
