import type { CellValue } from "exceljs";
import { ADD_IN } from "../../../catalog/about/add-in";
import { functionsOf } from "../../../formula/functions";
import { storedFormula } from "../../../formula/stored";
import { chooseFrom, entry, figure } from "./cells";
import { freeze, type Page, put, repeatRows } from "./page";
import { HEADER, SMALL } from "./style";

/** A column of a table: typed in (its values come from the rows under `from`) or computed by a formula. */
export interface Column {
  header: string;
  format?: string;
  /** Key of the row's value. */
  from?: string;
  /** Formula of a computed column, as typed in Excel. */
  formula?: string;
  /** Defined name of the list to choose from. */
  list?: string;
}

export type Row = Readonly<Record<string, CellValue>>;

/**
 * An Excel table at a cell. The row above it names the function that fills each computed column.
 * Returns the number of the table's last row.
 */
export function drawTable(
  page: Page,
  at: string,
  name: string,
  columns: readonly Column[],
  rows: readonly Row[],
): number {
  const corner = page.sheet.getCell(at);
  const [top, left] = [Number(corner.row), Number(corner.col)];
  page.sheet.addTable({
    name,
    ref: at,
    headerRow: true,
    style: { theme: null as never, showRowStripes: false },
    columns: columns.map(({ header }) => ({ name: header, filterButton: rows.length > 12 })),
    rows: rows.map(() => columns.map(() => null)),
  });
  page.sheet.getRow(top).height = 33;
  columns.forEach((column, i) => {
    const letter = page.sheet.getColumn(left + i).letter;
    put(page, `${letter}${top}`, column.header, HEADER);
    if (column.formula) describeColumn(page, name, `${letter}${top - 1}`, column as Column & { formula: string });
    rows.forEach((row, j) => fillCell(page, name, `${letter}${top + 1 + j}`, column, row));
  });
  return top + rows.length;
}

/** The table that a sheet is about, from column A down: its headings stay in sight and are printed on each page. */
export function drawMainTable(
  page: Page,
  headerRow: number,
  name: string,
  columns: readonly Column[],
  rows: readonly Row[],
  frozenColumns = 1,
): number {
  freeze(page, headerRow, frozenColumns);
  repeatRows(page, headerRow, headerRow);
  return drawTable(page, `A${headerRow}`, name, columns, rows);
}

function describeColumn(page: Page, table: string, above: string, column: Column & { formula: string }): void {
  put(page, above, [...new Set(functionsOf(ADD_IN, column.formula))].join(" "), SMALL);
  page.draft.columnFormulas.push({
    table,
    column: column.header,
    formula: storedFormula(ADD_IN, column.formula, table),
  });
}

function fillCell(page: Page, table: string, address: string, column: Column, row: Row): void {
  if (column.formula) return figure(page, address, column.formula, { format: column.format, table });
  entry(page, address, row[column.from ?? column.header] ?? null, { format: column.format });
  if (column.list) page.sheet.getCell(address).dataValidation = chooseFrom(column.list);
}
