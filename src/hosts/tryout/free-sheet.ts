import type { IWorkbookData } from "@univerjs/core";

/** The workbook with an empty sheet at the end, to type in. */
export function withFreeSheet(workbook: IWorkbookData): IWorkbookData {
  const id = "free";
  const sheet = { id, name: "Free sheet", rowCount: 200, columnCount: 20, defaultColumnWidth: 110 };
  return { ...workbook, sheetOrder: [...workbook.sheetOrder, id], sheets: { ...workbook.sheets, [id]: sheet } };
}
