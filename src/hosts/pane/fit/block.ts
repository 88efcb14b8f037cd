import { cellsIn, type Block } from "../../../formula/addresses";
import { boxAround } from "./box";
import { headingLines } from "./heading-lines";
import { dataRows } from "./data-rows";
import { cellsOn, isData, oneLine, type SheetHere } from "./sheet-here";
import type { Table } from "../../../formula/tables";

/** A column of a person's own sheet. */
export interface SheetColumn {
  column: number;
  /** What stands above it, in one line. */
  heading: string;
  /** The same read otherwise: its last line alone, and with the heading that spans several columns. */
  otherwise: readonly string[];
  /** What its rows hold, in the order of the block's rows. */
  cells: readonly unknown[];
}

/** Rows under headings, with the chosen cell among them. */
export interface HeadedBlock {
  columns: readonly SheetColumn[];
  /** The last line of the headings. */
  headingRow: number;
  /** The rows that are filled in: blank ones, totals and notes are none of them. */
  rows: readonly number[];
  /** All that it covers, its headings, totals and blank rows too. */
  box: Block;
  table?: Table;
}

/** What is missing where there are numbers round the chosen cell but nothing that says what they are. */
export interface Lacking {
  lacks: string;
}

/** The headed block round the chosen cell, or what it lacks; nothing where the cell lies in none. */
export function headedBlock(here: SheetHere): HeadedBlock | Lacking | undefined {
  const found = blockRound(here);
  if (!found || "lacks" in found || found.rows.length > 0) return found;
  return {
    lacks: "There are headings here, but no filled row below them yet. Fill in one row, then choose a cell of it.",
  };
}

function blockRound(here: SheetHere): HeadedBlock | Lacking | undefined {
  const { table } = here;
  if (table && !table.headings)
    return { lacks: `The table ${table.name} hides its headings. Show its header row first.` };
  if (table) return ofTable(table, here);
  const box = boxAround(here);
  if (!box) return undefined;
  const lines = headingLines(box, here);
  if (lines) return withRows(lines, { ...box, top: lines.firstRow }, lines.headingRow, here);
  if (!holdsData(box, here) || cellsIn(box) === 1) return undefined;
  return {
    lacks:
      "There are numbers here, but no headings above them. Type a heading over each column, such as Dia, Length or " +
      "Species, then choose a cell below them again.",
  };
}

function ofTable(table: Table, here: SheetHere): HeadedBlock {
  const headings = table.columns.map((name) => ({ heading: oneLine(name), otherwise: [] }));
  const body = { ...table.block, bottom: table.block.bottom - (table.totals ? 1 : 0) };
  return { ...withRows({ headings }, body, table.block.top, here), box: table.block, table };
}

function withRows(
  { headings }: { headings: readonly Pick<SheetColumn, "heading" | "otherwise">[] },
  box: Block,
  headingRow: number,
  here: SheetHere,
): HeadedBlock {
  const { at } = cellsOn(here);
  const rows = dataRows({ ...box, top: headingRow + 1 }, here);
  const columns = headings.map((heading, i) => {
    const column = box.left + i;
    return { ...heading, column, cells: rows.map((row) => at(row, column)) };
  });
  return { columns: columns.filter(({ heading }) => heading !== ""), headingRow, rows, box };
}

function holdsData(box: Block, here: SheetHere): boolean {
  const { filledIn } = cellsOn(here);
  for (let row = box.top; row <= box.bottom; row++) if (filledIn(row, box).some(isData)) return true;
  return false;
}
