import { mustBeScalable, type Limits, type Log } from "./log";
import { SCRIBNER_DECIMAL_C } from "./scribner-decimal-c.table";
import { LENGTH_CLASS_FT, tableClass } from "./table-class";

const { lengthsFt, smallestIn, boardFeet } = SCRIBNER_DECIMAL_C;
const FURTHER = 'the table ends there; the rule "Scribner", the formula, goes further';

export const SCRIBNER_DECIMAL_C_LIMITS: Limits = {
  rule: "Scribner Decimal C",
  smallestIn,
  largestIn: smallestIn + boardFeet.length - 1,
  shortestFt: lengthsFt[0],
  longestFt: lengthsFt.at(-1)!,
  enteredBy: tableClass,
  diameterAdvice: FURTHER,
  lengthAdvice: `Georgia scales 18 ft or more as two logs, each by its own diameter; ${FURTHER}`,
};

/**
 * Board feet in a log by the Scribner Decimal C table, in tens. It is a table only: no formula gives it.
 *
 * Where the table ends there is no answer. Georgia scales a log of 18 ft or more as two, each by its own diameter:
 * measure (or estimate by DIAMETERAT) where they meet.
 *
 * @formula by table: the printed cell of row D and column L; D = wholeInches() [in]; L = down(lengthFt, 2) [ft]
 * @source Wengert log volume, Scribner log volume
 * @source Georgia OCGA 2-14-80, the legal rule and its rounding
 * @range 6 to 20 in, 6 to 16 ft (under 18): larger sizes of the table were not seen in print
 * @checked 90 of 90 cells of Wengert's Scribner Decimal C table; Bailey 1911 differs on 7 in by 8 ft (5, not 10)
 */
export function scribnerDecimalCBoardFeet(log: Log): number {
  mustBeScalable(log, SCRIBNER_DECIMAL_C_LIMITS);
  const { diameterIn, lengthFt } = tableClass(log);
  return boardFeet[diameterIn - smallestIn]![(lengthFt - lengthsFt[0]) / LENGTH_CLASS_FT]!;
}
