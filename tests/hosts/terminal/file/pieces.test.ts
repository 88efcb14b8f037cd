import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dependentsOf, type Node } from "../../../../src/hosts/terminal/file/dependents";
import { asRead, asksBole, withoutNames } from "../../../../src/formula/names";
import { pointsOutside, referencesOf } from "../../../../src/formula/references";
import { movedFormula } from "../../../../src/formula/shared-formula";
import { readSheet } from "../../../../src/xlsx/sheet-cells";
import { withCells } from "../../../../src/xlsx/sheet-edit";
import { cellText, declaresDocumentType, elements, escapedCellText, tags } from "../../../../src/xlsx/xml";
import { blockOf, rangeOf } from "../../../../src/formula/addresses";

describe("a formula copied down and to the right", () => {
  it.each([
    ["A1+$A1+A$1+$A$1", "B3+$A3+B$1+$A$1"],
    ["SUM(A1:B2,C:C,$D:D,5:5,$6:6)", "SUM(B3:C4,D:D,$D:E,7:7,$6:8)"],
    ["LOG10(A1)&\"A1\"&'A1 b'!A1", "LOG10(B3)&\"A1\"&'A1 b'!B3"],
    ["Logs[A1]+Sheet1!A1*1.5", "Logs[A1]+Sheet1!B3*1.5"],
    ["_xldudf_BOLE_LOGSCALE(A1,12)+Q1_total", "_xldudf_BOLE_LOGSCALE(B3,12)+Q1_total"],
  ])("%s reads %s two rows down and one column right", (formula, moved) =>
    expect(movedFormula(formula, 2, 1)).toBe(moved),
  );
});

describe("what a formula points at", () => {
  it.each([
    ["=A1+Logs!$B$2:$C$3", ["Here!A1", "Logs!B2:C3"]],
    ["='Log book'!A1+'it''s'!B2&\"C3\"", ["Log book!A1", "it's!B2"]],
    ["=LOG10(5)+BOLE.EMC(A1,2)+B3:A2", ["Here!A1", "Here!A2:B3"]],
    ["=SUM(A:B)", ["Here!A1:B1048576"]],
    ["=SUM(2:3)", ["Here!A2:XFD3"]],
  ])("%s", (formula, expected) => {
    expect(referencesOf(formula, "Here").map(({ sheet, block }) => `${sheet}!${rangeOf(block)}`)).toEqual(expected);
  });
  it.each([
    ["=[1]Sheet1!A1", "another workbook"],
    ["='[2]My sheet'!A1", "another workbook"],
    ["=[1]!Rate", "another workbook"],
    ["=SUM(Jan:Dec!A1)", "several sheets at once"],
    ["=SUM('Jan 1:Dec 1'!A1)", "several sheets at once"],
    ["=SUM(Logs[2024])", undefined],
    ["=SUM(A1:B2)", undefined],
  ])("%s points at %s", (formula, outside) => expect(pointsOutside(formula)).toBe(outside));
});

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

describe("names", () => {
  const names = [
    { name: "Rule", refersTo: "'Log book'!$D$4" },
    { name: "Rate", refersTo: "Mill!$B$2", sheet: 1 },
    { name: "Rate", refersTo: "Mill!$B$1" },
    { name: "Twice", refersTo: "Rate*2" },
    { name: "Self", refersTo: "Self+1" },
  ];
  const sheets = ["Logs", "Prices"];
  it.each([
    [0, "SCALE(A1,rule)", "SCALE(A1,'Log book'!$D$4)"],
    [0, "Rate+1", "Mill!$B$1+1"],
    [1, "Rate+1", "Mill!$B$2+1"],
    [0, "Prices!Rate+1", "Mill!$B$2+1"],
    [0, "Twice", "(Mill!$B$1*2)"],
    [0, '"Rule"&Logs[Rule]&Rule.two&_xlpm.Rate', '"Rule"&Logs[Rule]&Rule.two&_xlpm.Rate'],
    [0, "Self", "Self"],
  ])("on sheet %i %s stands for %s", (sheet, formula, meant) => {
    expect(withoutNames(formula, names, sheets, sheet)).toBe(meant);
  });
  it.each([
    ["_xldudf_BOLE_EMC(A1,B1)", true],
    ["BOLE.EMC(A1,B1)", true],
    ["MAP(A1:A3,_xldudf_bole_fraction)", true],
    ['"BOLE.EMC(1)"', false],
    ["'BOLE.EMC'!A1", false],
    ["NOBOLE.EMC(1)", false],
    ["_xldudf_OTHER_EMC(1)", false],
  ])("%s asks Bole: %s", (formula, asks) => expect(asksBole(formula)).toBe(asks));
  it("is shown as our pages write it", () => {
    expect(asRead('_xldudf_bole_emc(A1,"bole.emc")')).toBe('=BOLE.EMC(A1,"bole.emc")');
  });
});

describe("who leans on whom", () => {
  const node = (sheet: string, range: string, ...references: string[]): Node => ({
    sheet,
    block: blockOf(range),
    references: references.map((one) => ({ sheet: one.split("!")[0]!, block: blockOf(one.split("!")[1]!) })),
  });
  const scale = node("Logs", "C1");
  const twice = node("Logs", "D1", "Logs!C1");
  const sum = node("Sums", "A1", "logs!A1:D5000");
  const total = node("Sums", "B1", "Sums!A1");
  const other = node("Sums", "C1", "Logs!A1:B5000", "Sums!D1");
  const spill = node("Plan", "A1:B9", "Sums!B1");
  const under = node("Plan", "D1", "Plan!B9");
  it("is followed over sheets, long ranges and spilled answers, and not further", () => {
    expect(dependentsOf([scale], [other, under, spill, total, sum, twice, scale])).toEqual([
      under,
      spill,
      total,
      sum,
      twice,
    ]);
  });
  it("ends where formulas lean on each other", () => {
    const [one, two] = [node("L", "A1", "L!B1"), node("L", "B1", "L!A1")];
    expect(dependentsOf([one], [one, two])).toEqual([two]);
  });
});

describe("XML", () => {
  it("passes over comments, CDATA and signs within attributes", () => {
    const xml = `<?xml version="1.0"?><a><!-- <b> --><b t=">"/><![CDATA[<c>]]><x:d>e</x:d></a>`;
    expect([...tags(xml)].map(({ name, kind, depth }) => `${kind} ${name} ${depth}`)).toEqual([
      "open a 0",
      "alone b 1",
      "open d 1",
      "close d 1",
      "close a 0",
    ]);
    expect(elements(xml, "d")[0]).toMatchObject({ inside: "e" });
  });
  it("finds a document type behind whatever may stand before it", () => {
    expect(declaresDocumentType('\uFEFF<?xml version="1.0"?>\n<!-- a --><!DOCTYPE a>')).toBe(true);
    expect(declaresDocumentType("<a><!-- <!DOCTYPE a> --></a>")).toBe(false);
  });
  it("takes any text there and back", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.constant("a_x000D_b\u0001<&>\"'")), (text) => {
        const held = text.replace(/[\uD800-\uDFFF]/g, "");
        expect(cellText(escapedCellText(held))).toBe(held);
      }),
      { seed: 7 },
    );
  });
});
