import { sheetNameOf, sheetPrefixOf } from "../../pane/address";
import { Refusal } from "../../pane/sheet-host";
import { inWorkbook } from "./in-workbook";

/** Puts a formula into the chosen cell if that is empty, and answers where it went. */
export function putIntoChosenCell(formulaAt: (sheetPrefix: string) => string): Promise<string> {
  return inWorkbook(async (context) => {
    const cell = context.workbook.getSelectedRange().getCell(0, 0);
    cell.load("address, formulas");
    await context.sync();
    const there: unknown = cell.formulas[0]?.[0];
    if (there !== "") throw new Refusal(`${cell.address} already holds ${String(there)}. Choose an empty cell`);
    const formula = formulaAt(sheetPrefixOf(cell.address));
    cell.formulas = [[formula]];
    await context.sync();
    return `${cell.address} now holds ${formula}`;
  });
}

/** The address of the chosen cells, with their sheet. */
export function chosenAddress(): Promise<string> {
  return inWorkbook(async (context) => {
    const range = context.workbook.getSelectedRange();
    range.load("address");
    await context.sync();
    return range.address;
  });
}

/** What the cells at an address hold. Without a sheet the one in front is meant. */
export function cellsAt(address: string): Promise<unknown[][]> {
  return inWorkbook(async (context) => {
    const prefix = sheetPrefixOf(address);
    const sheets = context.workbook.worksheets;
    const sheet = prefix === "" ? sheets.getActiveWorksheet() : sheets.getItem(sheetNameOf(prefix));
    const range = sheet.getRange(address.slice(prefix.length));
    range.load("values");
    await context.sync();
    return range.values;
  });
}
