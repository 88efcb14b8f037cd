import type { OpenedWorkbook } from "../../../src/engine/engine";

export type Row = Record<string, string | number | boolean>;

/** The rows of a sheet's table by its headings, which stand in columns A to Z of the row that begins with the first one. */
export function rowsUnder(opened: OpenedWorkbook, sheet: string, firstHeading: string): Row[] {
  const headerRow = Array.from({ length: 40 }, (_, i) => i + 1).find(
    (row) =>
      opened.value(sheet, `A${row}`) === firstHeading &&
      opened.value(sheet, `B${row}`) !== "" &&
      opened.value(sheet, `C${row}`) !== "",
  )!;
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
