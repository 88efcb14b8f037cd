import { addressOf, isWithin } from "../../../formula/addresses";
import type { Table } from "../../../formula/tables";
import { Refused } from "../../../xlsx/refused";
import type { ChangedCell } from "./changes";

/** Excel holds a file to be damaged in which a table's column is called otherwise than the cell above it. */
export function mustKeepHeadings(sheet: string, changed: readonly ChangedCell[], tables: readonly Table[]): void {
  for (const { name, block, sheet: home, headings } of tables) {
    if (!headings || home !== sheet) continue;
    const heading = changed.find((cell) => isWithin(cell, { ...block, bottom: block.top }));
    if (heading)
      throw new Refused(
        `${sheet}!${addressOf(heading.row, heading.column)} is the heading of a column of the table ${name}, which formulas call by it: undo that with Ctrl+Z and rename the column in Excel`,
      );
  }
}
