import type { OpenedWorkbook } from "../../../src/engine/engine";

export type Row = Record<string, string | number | boolean>;

/** The rows of a sheet's table by its headings, which stand in columns A to Z of a row. */
export function rowsUnder(opened: OpenedWorkbook, sheet: string, headerRow: number): Row[] {
  const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  const width = [...letters].findIndex((letter) => opened.value(sheet, `${letter}${headerRow}`) === "");
  const columns = [...letters].slice(0, width < 0 ? letters.length : width);
  const rows: Row[] = [];
  for (let row = headerRow + 1; opened.value(sheet, `A${row}`) !== ""; row++)
    rows.push(
      Object.fromEntries(
        columns.map((letter) => [
          String(opened.value(sheet, `${letter}${headerRow}`)),
          opened.value(sheet, `${letter}${row}`) as string | number,
        ]),
      ),
    );
  return rows;
}
