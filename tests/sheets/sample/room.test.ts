import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { readWorkbook, type FileSheet, type SheetLooks } from "../../../src/engine/workbook/read";
import { addressOf } from "../../../src/formula/addresses";
import type { Layout } from "../../../src/xlsx/layout";
import { SAMPLE } from "./parts";

/** A line of 11-point text is about this high, in points. */
const LINE = 13.5;

let sheets: (FileSheet & { looks: SheetLooks })[];
beforeAll(() => {
  sheets = readWorkbook(readFileSync(SAMPLE)).sheets.map((sheet) => ({ ...sheet, looks: sheet.looks! }));
});

describe("the sheets of the sample workbook", () => {
  it("have room for all the lines of a wrapped text", () => {
    const cut: string[] = [];
    let wrapped = 0;
    for (const { name, cells, looks } of sheets) {
      const lookAt = new Map(looks.cells.map(({ row, column, look }) => [`${row} ${column}`, look]));
      for (const { row, column, value } of cells) {
        const look = lookAt.get(`${row} ${column}`);
        if (!look?.wrap || typeof value !== "string") continue;
        const scale = (look.font?.size ?? 11) / 11;
        const lines = Math.ceil((value.length * scale * 0.95) / widthOf(looks.layout, row, column));
        if (lines > 1) wrapped++;
        if (lines > 1 && (looks.layout.heights.get(row)?.points ?? 15) < lines * LINE * scale)
          cut.push(`${name}!${addressOf(row, column)} ${value}`);
      }
    }
    expect(wrapped).toBeGreaterThan(100);
    expect(cut).toEqual([]);
  });

  it("say in a title what the sheet is for, and in a lead that runs across it", () => {
    for (const { name, cells, looks } of sheets) {
      const title = cells.find(({ row, column }) => row === 0 && column === 0)?.value;
      if (name !== "Invoice to print") expect(String(title).length, name).toBeGreaterThan(name.length + 8);
      expect(widthOf(looks.layout, 1, 0), name).toBeGreaterThan(76);
    }
  });
});

/** In characters; a merged cell is as wide as all its columns. */
function widthOf({ widths, merges }: Layout, row: number, column: number): number {
  const right = merges.find(({ top, left }) => top === row && left === column)?.right ?? column;
  let width = 0;
  for (let at = column; at <= right; at++) width += widths.get(at)?.characters ?? 9;
  return width;
}
