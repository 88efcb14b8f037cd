import { readFileSync } from "node:fs";
import type ExcelJS from "exceljs";
import { beforeAll, describe, expect, it } from "vitest";
import { readWorkbook } from "../../../src/engine/workbook/read";
import { SAMPLE } from "./parts";

/** A line of 11-point text is about this high, in points. */
const LINE = 13.5;

let sheets: ExcelJS.Worksheet[];
beforeAll(async () => {
  sheets = (await readWorkbook(readFileSync(SAMPLE))).sheets.map(({ looks }) => looks);
});

describe("the sheets of the sample workbook", () => {
  it("have room for all the lines of a wrapped text", () => {
    const cut: string[] = [];
    let wrapped = 0;
    for (const sheet of sheets)
      sheet.eachRow((row) =>
        row.eachCell((cell) => {
          if (!cell.alignment?.wrapText || cell.master !== cell) return;
          const scale = (cell.font?.size ?? 11) / 11;
          const lines = Math.ceil((cell.text.length * scale * 0.95) / widthOf(sheet, cell));
          if (lines > 1) wrapped++;
          if (lines > 1 && (row.height ?? 15) < lines * LINE * scale)
            cut.push(`${sheet.name}!${cell.address} ${cell.text}`);
        }),
      );
    expect(wrapped).toBeGreaterThan(100);
    expect(cut).toEqual([]);
  });

  it("say in a title what the sheet is for, and in a lead that runs across it", () => {
    for (const sheet of sheets) {
      const [title, lead] = [sheet.getCell("A1"), sheet.getCell("A2")];
      if (sheet.name !== "Invoice to print")
        expect(title.text.length, sheet.name).toBeGreaterThan(sheet.name.length + 8);
      expect(widthOf(sheet, lead), sheet.name).toBeGreaterThan(76);
    }
  });
});

/** In characters; a merged cell is as wide as all its columns. */
function widthOf(sheet: ExcelJS.Worksheet, cell: ExcelJS.Cell): number {
  let [column, width] = [Number(cell.col), 0];
  do width += sheet.getColumn(column++).width ?? 9;
  while (sheet.getCell(Number(cell.row), column).master === cell);
  return width;
}
