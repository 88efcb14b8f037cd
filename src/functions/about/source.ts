import { text } from "../../cells/read";
import { table } from "../../cells/spread";
import { sourceTable } from "../../catalog/about/source-table";

/**
 * Formula, source, range and grade behind a function of Bole.
 *
 * @customfunction SOURCE
 * @returns A table with a row for every formula the function rests on
 * @words where does the number come from, trust, proof
 * @example =BOLE.SOURCE("KERFLOSS") gives a table of 2 rows
 * @example =BOLE.SOURCE("SUM") gives #N/A
 */
export const SOURCE = table(
  {
    /** Name of the function, with or without BOLE. before it. */
    name: text,
  },
  sourceTable,
);
