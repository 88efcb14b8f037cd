import type { IWorkbookData } from "@univerjs/core";
import { freeSheetName } from "../../sheets/ready/free-name";

/** The grid's own name for the sheet, which no sheet of a file has. */
export const FREE_SHEET = "free";

/** The workbook with an empty sheet to type in, right beside the first. */
export function withFreeSheet(workbook: IWorkbookData): IWorkbookData {
  const id = FREE_SHEET;
  const taken = Object.values(workbook.sheets).map((sheet) => sheet.name ?? "");
  const sheet = {
    id,
    name: freeSheetName("Free sheet", taken),
    rowCount: 200,
    columnCount: 20,
    defaultColumnWidth: 140,
  };
  const [first = "", ...others] = workbook.sheetOrder;
  return { ...workbook, sheetOrder: [first, id, ...others], sheets: { ...workbook.sheets, [id]: sheet } };
}
