import { LAST_COLUMN } from "../../../formula/addresses";
import { freeHeading } from "../../../sheets/ready/free-name";
import { Refusal } from "../sheet-host";
import type { HeadedBlock } from "./block";
import { cellsOn, oneLine, type SheetHere } from "./sheet-here";

/** A column of formulas to be added to a sheet. Every cell that it covers must be empty. */
export interface NewColumn {
  sheet: string;
  /** The table that it is added to, where it is one of the program's own. */
  table?: string;
  column: number;
  headingRow: number;
  heading: string;
  /** A formula for each row below the heading; "" leaves the row as it is. */
  formulas: readonly string[];
}

/** A heading for the answers of a function that none of the block's columns has. */
export function headingFor(wanted: string, { columns }: HeadedBlock): string {
  return freeHeading(
    oneLine(wanted),
    columns.map(({ heading }) => heading),
  );
}

/** What the answers of a function are called, in plain words: `Board feet` of "Board feet, whole". */
export function plainHeading(returns: string, name: string): string {
  const [first = ""] = returns.split(/[,;:(]| in the | of the | to be /);
  return first.trim() === "" || first.length > LONGEST_HEADING ? name : first.trim();
}

/** A longer heading makes a wide column. */
const LONGEST_HEADING = 32;

/**
 * The column that is free for the answers: the one right of the block, or the next that stands by itself, so that two
 * tables do not grow together. A table of the program's own grows to the right, where nothing may be in its way.
 */
export function freeColumn(block: HeadedBlock, here: SheetHere): number {
  const { isTaken } = cellsOn(here);
  const rows = Array.from({ length: block.box.bottom - block.headingRow + 1 }, (_, i) => block.headingRow + i);
  const isEmpty = (column: number) => rows.every((row) => !isTaken(row, column));
  const beside = block.box.right + 1;
  if (block.table) {
    if (isEmpty(beside)) return beside;
    throw new Refusal(
      `The cells right of the table ${block.table.name} are not empty, and nothing is written over or moved. Insert an ` +
        "empty column there first",
    );
  }
  if (isEmpty(beside) && isEmpty(beside + 1)) return beside;
  for (let column = beside + 1; column <= LAST_COLUMN; column++)
    if (isEmpty(column - 1) && isEmpty(column) && isEmpty(column + 1)) return column;
  throw new Refusal("No column to the right is empty");
}
