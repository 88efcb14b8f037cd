import { repeated, text } from "../../cells/read";
import { table, type WorksheetFunction } from "../../cells/spread";
import { workingTable } from "../../catalog/about/working/working-table";
import * as functions from "..";

/**
 * Steps behind an answer, to check it by hand: what was read, each formula with its numbers, the answer last.
 *
 * Write the function's name, then its arguments as the function itself takes them, one log or board at a time. Numbers
 * are shown in as many digits as one gets who works on with the digits shown above; the last line is the answer itself.
 *
 * @customfunction WORKING
 * @returns A table: symbol, what it is, the formula with the numbers in it, value and unit; the answer last
 * @words check by hand, show your working, prove it, argue over a scale ticket, steps
 * @see SOURCE
 * @example =BOLE.WORKING("KERFLOSS", 1, 0.125) gives a table of 7 rows: answer 0.1111111
 * @example =BOLE.WORKING("LOGSCALE", 24, 12, "Doyle") gives a table of 13 rows: answer 300
 * @example =BOLE.WORKING("LOGSCALE", 3, 12, "Doyle") gives #N/A
 */
export const WORKING: WorksheetFunction = table(
  {
    /** Name of the function, with or without BOLE. before it. */
    name: text,
    /** The function's own arguments, in its own order. */
    inputs: repeated,
  },
  (call) => workingTable(call, functions),
);
