import { NoAnswer } from "../errors";
import type { Log } from "./log";
import { SCRIBNER_DECIMAL_C } from "./scribner-decimal-c.table";
import { tableClass } from "./table-class";

const { lengthsFt, smallestIn, boardFeet } = SCRIBNER_DECIMAL_C;
const LARGEST_IN = smallestIn + boardFeet.length - 1;
const SHORTEST_FT = lengthsFt[0];
const LONGEST_FT = lengthsFt[lengthsFt.length - 1]!;

const FURTHER = 'the rule "Scribner", the formula, goes further';

/**
 * Board feet in a log by the Scribner Decimal C table, in tens. It is a table only: no formula gives it.
 *
 * Where the table ends there is no answer. Georgia scales a log of 18 ft or more as two, each by its own diameter:
 * measure (or estimate by DIAMETERAT) where they meet.
 *
 * @formula the printed cell for D to the nearest inch, an exact half dropped, and L down to even feet
 * @source Wengert log volume, Scribner log volume
 * @source Georgia OCGA 2-14-80, the legal rule and its rounding
 * @range 6 to 20 in, 6 to 16 ft (under 18): larger sizes of the table were not seen in print
 * @checked 90 of 90 cells of Wengert's Scribner Decimal C table; Bailey 1911 differs on 7 in by 8 ft (5, not 10)
 */
export function scribnerDecimalCBoardFeet(log: Log): number {
  const { diameterIn, lengthFt } = tableClass(log);
  mustLieIn(smallestIn, LARGEST_IN, diameterIn, log.diameterIn, "diameter (in)");
  mustLieIn(SHORTEST_FT, LONGEST_FT, lengthFt, log.lengthFt, "length (ft)");
  return boardFeet[diameterIn - smallestIn]![(lengthFt - SHORTEST_FT) / 2]!;
}

function mustLieIn(first: number, last: number, size: number, given: number, what: string): void {
  if (!(size >= first && size <= last))
    throw new NoAnswer(`Scribner Decimal C ${what}: the table runs from ${first} to ${last}, got ${given}; ${FURTHER}`);
}
