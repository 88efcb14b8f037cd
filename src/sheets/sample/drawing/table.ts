import { blockOf, columnLetters } from "../../../formula/addresses";
import { cellIn } from "../../../xlsx/write/book";
import { ADD_IN } from "../../../catalog/about/add-in";
import { functionsOf } from "../../../formula/functions";
import { storedFormula } from "../../../formula/stored";
import type { Column, Row } from "../../definition";
import { chooseFrom, entry, figure } from "./cells";
import { freeze, type Page, put, repeatRows, setHeight } from "./page";
import { HEADER, SMALL } from "./style";

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
  const { top, left } = blockOf(at);
  const headings = top + 1;
  page.sheet.tables.push({
    name,
    block: { top, left, bottom: top + rows.length, right: left + columns.length - 1 },
    columns: columns.map(({ heading, formula }) => ({ name: heading, ...(formula && filling(formula, name)) })),
    filters: rows.length > 12,
  });
  setHeight(page, headings, 33);
  columns.forEach((column, i) => {
    const letter = columnLetters(left + i);
    put(page, `${letter}${headings}`, column.heading, HEADER);
    if (column.formula) describeColumn(page, `${letter}${headings - 1}`, column.formula);
    rows.forEach((row, j) => fillCell(page, name, `${letter}${headings + 1 + j}`, column, row));
  });
  return headings + rows.length;
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

export function describeColumn(page: Page, above: string, formula: string): void {
  put(page, above, [...new Set(functionsOf(ADD_IN, formula))].join(" "), SMALL);
}

/** With its formula kept in the table, a column fills itself when the sawyer adds a row. */
export function filling(typed: string, table: string) {
  return { formula: storedFormula(ADD_IN, typed, table), array: functionsOf(ADD_IN, typed).length > 0 };
}

function fillCell(page: Page, table: string, address: string, column: Column, row: Row): void {
  if (column.formula) return figure(page, address, column.formula, { format: column.format, table });
  entry(page, address, row[column.heading] ?? null, { format: column.format });
  if (column.list) cellIn(page.sheet, address).choices = chooseFrom(column.list);
}
