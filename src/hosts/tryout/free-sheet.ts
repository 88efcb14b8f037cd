import type { IWorkbookData } from "@univerjs/core";

/** The workbook with an empty sheet to type in, right beside the first. */
export function withFreeSheet(workbook: IWorkbookData): IWorkbookData {
  const id = "free";
  const sheet = { id, name: "Free sheet", rowCount: 200, columnCount: 20, defaultColumnWidth: 140 };
  const [first = "", ...others] = workbook.sheetOrder;
  return { ...workbook, sheetOrder: [first, id, ...others], sheets: { ...workbook.sheets, [id]: sheet } };
}
