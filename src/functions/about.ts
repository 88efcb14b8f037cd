import { text } from "../cells/read";
import { table } from "../cells/spread";
import { sourceTable } from "../catalog/source-table";
import { versionTable } from "../catalog/version";

/**
 * Formula, source, range and grade behind a function of Bole.
 *
 * @customfunction SOURCE
 * @param name Name of the function, with or without BOLE. before it.
 * @returns A table with a row for every formula the function rests on
 * @words where does the number come from, trust, proof
 * @example =BOLE.SOURCE("KERFLOSS") gives a table of 2 rows
 * @example =BOLE.SOURCE("SUM") gives #N/A
 */
export function SOURCE(name: unknown[][]): unknown[][] {
  return table({ name: text(name, "name") }, sourceTable);
}

/**
 * Version of Bole, for a cell that shows at a glance whether the add-in is there.
 *
 * @customfunction VERSION
 * @returns Version text
 * @words is the add-in there, status
 * @example =BOLE.VERSION() gives "Bole 0.1.0"
 */
export function VERSION(): unknown[][] {
  return table({}, versionTable);
}
