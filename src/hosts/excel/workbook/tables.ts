import { blockOf } from "../../../formula/addresses";
import type { Table } from "../../../formula/tables";
import { sheetPrefixOf } from "../../pane/address";

/** The tables of the workbook, each with its place and its columns. What else was asked to be loaded is there afterwards. */
export async function tablesIn(context: Excel.RequestContext): Promise<Table[]> {
  const { tables } = context.workbook;
  tables.load("items/name, items/showHeaders, items/showTotals, items/worksheet/name");
  await context.sync();
  const ranges = tables.items.map((table) => table.getRange());
  for (const range of ranges) range.load("address");
  const columns = tables.items.map((table) => table.columns);
  for (const one of columns) one.load("items/name");
  await context.sync();
  return tables.items.map(({ name, showHeaders, showTotals, worksheet }, at): Table => ({
    ...{ name, sheet: worksheet.name, headings: showHeaders, totals: showTotals },
    columns: columns[at]!.items.map((column) => column.name),
    block: blockOf(ranges[at]!.address.slice(sheetPrefixOf(ranges[at]!.address).length)),
  }));
}
