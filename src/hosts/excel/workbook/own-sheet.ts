import { addressOf, isWithin } from "../../../formula/addresses";
import type { NewColumn } from "../../pane/fit/new-column";
import { isBlankCell, mustBeReadable, type SheetHere } from "../../pane/fit/sheet-here";
import { Refusal } from "../../pane/sheet-host";
import { inWorkbook } from "./in-workbook";
import { tablesIn } from "./tables";

/** What the sheet in front holds, with the chosen cell on it and the table round that. */
export function sheetHere(): Promise<SheetHere> {
  return inWorkbook(async (context) => {
    const cell = context.workbook.getSelectedRange().getCell(0, 0);
    cell.load("rowIndex, columnIndex");
    const { worksheet } = cell;
    worksheet.load("name");
    const used = worksheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex, columnIndex, rowCount, columnCount");
    await context.sync();
    const sheet = worksheet.name;
    const chosen = { row: cell.rowIndex, column: cell.columnIndex };
    if (used.isNullObject) return { sheet, chosen, top: 0, left: 0, values: [], formulas: [] };
    mustBeReadable(sheet, used.rowCount * used.columnCount);
    used.load("values, formulas");
    const tables = await tablesIn(context);
    const { rowIndex: top, columnIndex: left, values, formulas } = used;
    const table = tables.find((one) => one.sheet === sheet && isWithin(chosen, one.block));
    return { sheet, chosen, top, left, values, formulas, ...(table && { table }) };
  });
}

/** Adds a column of formulas to a table, or beside a range, where every cell is empty still. */
export function addColumn(column: NewColumn): Promise<string> {
  return inWorkbook(async (context) => {
    const sheet = context.workbook.worksheets.getItem(column.sheet);
    const rows = column.formulas.length + 1;
    const place = sheet.getRangeByIndexes(column.headingRow, column.column, rows, 1);
    sheet.load("protection/protected");
    place.load("formulas, numberFormat, address");
    await context.sync();
    if (sheet.protection.protected)
      throw new Refusal(`The sheet ${column.sheet} is protected. Unprotect it first, or work on a copy of it`);
    const taken = place.formulas.findIndex(([cell]) => !isBlankCell(cell));
    if (taken >= 0) {
      const address = addressOf(column.headingRow + taken, column.column);
      throw new Refusal(`${column.sheet}!${address} is no longer empty, so nothing was added. Choose the cell again`);
    }
    if (column.table) addToTable(column, column.table, context);
    else {
      // A cell formatted as Text would show the formula instead of its answer.
      const formats = place.numberFormat.map(([format]) => [format === "@" ? "General" : String(format)]);
      if (place.numberFormat.some(([format]) => format === "@")) place.numberFormat = formats;
      place.formulas = [column.heading, ...column.formulas].map((content) => [content]);
    }
    await context.sync();
    return `${place.address} now holds ${column.heading}`;
  });
}

function addToTable({ heading, formulas }: NewColumn, table: string, context: Excel.RequestContext): void {
  // At its end; the formulas come afterwards, since a totals row would count among the values of a new column.
  const added = context.workbook.tables.getItem(table).columns.add(-1, undefined, heading);
  added.getDataBodyRange().formulas = formulas.map((formula) => [formula]);
}
