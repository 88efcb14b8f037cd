import { describe, expect, it } from "vitest";
import { readSheet } from "../../src/xlsx/sheet-cells";
import { withCells } from "../../src/xlsx/sheet-edit";

describe("a day that the file spells out", () => {
  it.each(["2026-03-01", "2026-03-01T12:00:00", "2026-03-01T12:00:00Z"])("%s counts as a spreadsheet counts", (day) => {
    const xml = `<worksheet><sheetData><row r="1"><c r="A1" t="d"><v>${day}</v></c></row></sheetData></worksheet>`;
    expect(readSheet(xml, []).rows[0]?.cells[0]?.value).toBe(day.includes("T") ? 46082.5 : 46082);
  });
});

describe("what stands behind the rows of a sheet", () => {
  const scale = `<conditionalFormatting sqref="B1"><cfRule type="colorScale" priority="1"><colorScale><cfvo type="min"/><color rgb="FFFF0000"/></colorScale></cfRule></conditionalFormatting>`;
  const filter = `<autoFilter ref="A1:B9"><filterColumn colId="0"><filters><filter val="oak"/></filters></filterColumn></autoFilter>`;
  it.each([scale, filter])("is no piece of the last cell, however deep it lies: %s", (after) => {
    const xml = `<worksheet><sheetData><row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>A1+1</f><v>9</v></c></row></sheetData>${after}</worksheet>`;
    expect(withCells(readSheet(xml, []), [{ row: 0, column: 1, value: 2 }])).toBe(xml.replace("<v>9</v>", "<v>2</v>"));
  });
});
