import { describe, expect, it } from "vitest";
import type { ChangedCell, Changes } from "../../../../src/hosts/tryout/saving/changes";
import { saved } from "../../../../src/hosts/tryout/saving/saved";
import { readWorkbook } from "../../../../src/engine/workbook/read";
import { cellsOf, cellXml, differences, override, partsOf, tiny, type Tiny } from "../../terminal/file/tiny";

const AT = new Date("2026-03-01T00:00:00Z");
const SHEET = "xl/worksheets/sheet1.xml";
const row = (number: number, cells: string) => `<row r="${number}">${cells}</row>`;

const change = (row: number, column: number, value: ChangedCell["value"], more: Partial<ChangedCell> = {}) => ({
  ...{ row, column, value },
  ...more,
});

function savedWith(what: Tiny, cells: ChangedCell[], more: Partial<Changes> = {}) {
  const before = tiny(what);
  const made = saved(before, { cells: [{ sheet: "Logs", cells }], added: [], left: [], ...more }, AT);
  const parts = partsOf(made.bytes);
  return { ...made, parts, sheet: parts[SHEET]!, cells: cellsOf(parts[SHEET]!), diff: differences(before, made.bytes) };
}

const LOGS: Tiny = {
  sheets: {
    Logs: row(1, '<c r="A1"><v>20</v></c><c r="B1"><f>A1*2</f><v>40</v></c><c r="C1" t="str"><f>"x"</f><v>x</v></c>'),
  },
};

describe("a workbook that is saved with what was typed", () => {
  it("changes the typed cell and the answer that followed, and no other sign", () => {
    const { cells, diff } = savedWith(LOGS, [change(0, 0, 21), change(0, 1, 42, { answered: true })]);
    expect(cells).toEqual({
      A1: '<c r="A1"><v>21</v></c>',
      B1: '<c r="B1"><f>A1*2</f><v>42</v></c>',
      C1: '<c r="C1" t="str"><f>"x"</f><v>x</v></c>',
    });
    expect(diff).toEqual({ changed: [SHEET], added: [], removed: [] });
  });

  it("empties a cell, its formula too, and drops the order of calculation that names it", () => {
    const order = { "xl/calcChain.xml": '<calcChain xmlns="x"><c r="B1" i="1"/></calcChain>' };
    const what = {
      ...LOGS,
      ...{ parts: order, workbookRelations: [["calcChain", "calcChain.xml"]] as [string, string][] },
      types: override("xl/calcChain.xml", "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml"),
    };
    const { cells, diff } = savedWith(what, [change(0, 1, null)]);
    expect(cells["B1"]).toBe('<c r="B1"/>');
    expect(diff.removed).toEqual(["xl/calcChain.xml"]);
  });

  it("stores a call of ours as Excel does, marked as one whose answer may grow", () => {
    const { cells, parts, diff } = savedWith(LOGS, [
      change(1, 0, 192, { formula: '=BOLE.LOGSCALE(A1,12,"Doyle")' }),
      change(2, 0, 3, { formula: "=MAXIFS(A1:A2,A1:A2,3)" }),
    ]);
    expect(cells["A2"]).toBe(
      '<c r="A2" cm="1"><f t="array" ref="A2">_xldudf_BOLE_LOGSCALE(A1,12,&quot;Doyle&quot;)</f><v>192</v></c>',
    );
    expect(cells["A3"]).toBe('<c r="A3"><f>_xlfn.MAXIFS(A1:A2,A1:A2,3)</f><v>3</v></c>');
    expect(diff.added).toEqual(["xl/metadata.xml"]);
    expect(parts["xl/_rels/workbook.xml.rels"]).toContain("/sheetMetadata");
    expect(parts["[Content_Types].xml"]).toContain("/xl/metadata.xml");
  });

  it.each([
    // The mark is the second of the workbook's own; the first is of another kind.
    ["the workbook's mark for it", '<bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk>', ' cm="2"'],
    [
      "no mark, as an array formula of the older kind, where the workbook has other marks only",
      '<bk><rc t="1" v="0"/></bk>',
      "",
    ],
  ])("gives a typed call %s", (_, marks, mark) => {
    const metadata =
      '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
      '<metadataTypes count="2"><metadataType name="XLRICHVALUE"/><metadataType name="XLDAPR"/></metadataTypes>' +
      '<futureMetadata name="XLRICHVALUE"><bk/></futureMetadata><futureMetadata name="XLDAPR"><bk><extLst><ext><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
      `<cellMetadata>${marks}</cellMetadata></metadata>`;
    const what = {
      ...LOGS,
      parts: { "xl/metadata.xml": metadata },
      workbookRelations: [["sheetMetadata", "metadata.xml"]] as [string, string][],
    };
    const { cells, diff } = savedWith(what, [change(1, 0, 192, { formula: "=BOLE.EMC(A1,1)" })]);
    expect(cells["A2"]).toContain(`<c r="A2"${mark}><f t="array" ref="A2">`);
    expect(diff).toEqual({ changed: [SHEET], added: [], removed: [] });
  });

  it("writes the cells that an answer fills, and clears those that it left", () => {
    const spilled = { row: 1, column: 0, value: 2, spilled: true } as const;
    const block = { top: 0, left: 0, bottom: 1, right: 0 };
    const first = savedWith({ sheets: { Logs: "" } }, [
      change(0, 0, 1, { formula: "=BOLE.X(1)", fills: block }),
      spilled,
    ]);
    expect(first.cells["A2"]).toBe('<c r="A2"><v>2</v></c>');
    expect(first.cells["A1"]).toContain('t="array" ref="A1:A2"');
    const changes = { cells: [{ sheet: "Logs", cells: [change(0, 0, 7)] }], added: [], left: [] };
    const sheet = partsOf(saved(first.bytes, changes, AT).bytes)[SHEET]!;
    expect(cellsOf(sheet)).toEqual({ A1: '<c r="A1"><v>7</v></c>', A2: '<c r="A2"/>' });
  });

  it("gives each cell its own formula when the first of a copied one goes", () => {
    const shared =
      row(1, '<c r="A1"><f t="shared" ref="A1:A2" si="0">B1*2</f><v>2</v></c>') +
      row(2, '<c r="A2"><f t="shared" si="0"/><v>4</v></c>');
    const { cells } = savedWith({ sheets: { Logs: shared } }, [change(0, 0, 5)]);
    expect(cells).toEqual({ A1: '<c r="A1"><v>5</v></c>', A2: '<c r="A2"><f>B2*2</f><v>4</v></c>' });
  });

  it("refuses to put a value within the older kind of array formula, and says which", () => {
    const array =
      row(1, '<c r="A1"><f t="array" ref="A1:A2">B1:B2*2</f><v>2</v></c>') + row(2, '<c r="A2"><v>4</v></c>');
    expect(() => savedWith({ sheets: { Logs: array } }, [change(1, 0, 5)])).toThrow(
      "Logs!A2 is part of the array formula of A1:A2: change that formula in A1 or take back what was typed there",
    );
  });

  it.each([
    ["=1+", "which is not a formula that Excel can read"],
    ["=LET(a,1,a)", "which a copy cannot hold, since LET and LAMBDA give names of their own"],
    ["=[other.xlsx]Prices!A1", "which a copy cannot hold, since it points at another workbook"],
    ["=SUM(D1#)", "which a copy cannot hold, since it points at a spilled answer with #"],
  ])("refuses %s, by which the file would be a damaged one", (formula, why) => {
    expect(() => savedWith(LOGS, [change(4, 1, "#ERROR!", { formula })])).toThrow(
      `Logs!B5 holds ${formula}, ${why}: change it or take it out`,
    );
  });

  it("says where Excel has yet to calculate, and keeps there an error that a file knows", () => {
    const { cells, summary } = savedWith(LOGS, [change(2, 0, "#SPILL!", { formula: "=BOLE.X(1)" })]);
    expect(cells["A3"]).toContain('t="e"');
    expect(cells["A3"]).toContain("<v>#VALUE!</v>");
    expect(summary).toContain("1 formula without an answer here until Excel calculates: Logs!A3");
  });

  const STYLES =
    '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font><sz val="11"/><name val="Carlito"/></font></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="2"><xf numFmtId="0" fontId="0"/><xf numFmtId="0" fontId="0" applyFont="1"><alignment wrapText="1"/></xf></cellXfs></styleSheet>';
  const STYLED: Tiny = {
    sheets: { Logs: row(1, '<c r="A1" s="1"><v>20</v></c>') },
    parts: { "xl/styles.xml": STYLES },
    workbookRelations: [["styles", "styles.xml"]],
    types: override("xl/styles.xml", "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"),
  };

  it("shows a typed day as a day, with the rest of the cell's look", () => {
    const { cells, parts } = savedWith(STYLED, [change(0, 0, 46_085, { format: "yyyy-mm-dd" })]);
    expect(cells["A1"]).toBe('<c r="A1" s="2"><v>46085</v></c>');
    expect(parts["xl/styles.xml"]).toContain(
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy-mm-dd"/></numFmts>',
    );
    expect(parts["xl/styles.xml"]).toContain('<cellXfs count="3">');
    expect(parts["xl/styles.xml"]).toContain(
      '<xf numFmtId="164" applyNumberFormat="1" fontId="0" applyFont="1"><alignment wrapText="1"/></xf></cellXfs>',
    );
  });

  it("adds a sheet with its looks, widths, merged cells and formulas", () => {
    const added = {
      ...{ id: "r", name: "My log book", looks: "", hidden: false },
      frame: {
        widths: { 0: 75 },
        heights: { 0: 40 },
        merges: [{ top: 0, left: 0, bottom: 0, right: 1 }],
        frozen: { rows: 1, columns: 0 },
      },
      cells: [
        { row: 0, column: 0, value: "Logs & more", style: { bl: 1, bg: { rgb: "#fbf6f0" } } },
        { row: 1, column: 0, value: 40, formula: "=Logs!A1*2", format: "0.00" },
      ],
    };
    const { bytes, diff, parts } = savedWith(STYLED, [change(0, 0, 21)], { added: [added] });
    const sheets = readWorkbook(bytes).sheets;
    expect(sheets.map(({ name }) => name)).toEqual(["Logs", "My log book"]);
    expect(sheets[1]!.cells).toMatchObject([{ value: "Logs & more" }, { value: 40, formula: "=Logs!A1*2" }]);
    expect(sheets[1]!.looks!.layout).toMatchObject({ frozen: { rows: 1, columns: 0 }, gridlines: true });
    const [title, sum] = sheets[1]!.looks!.cells;
    expect(title!.look).toMatchObject({ fill: "FBF6F0", font: { bold: true, name: "Carlito", size: 11 } });
    expect(sum!.look.numberFormat).toBe("0.00");
    expect(parts["xl/worksheets/sheet2.xml"]).toContain('<mergeCell ref="A1:B1"/>');
    expect(diff.added).toEqual(["xl/worksheets/sheet2.xml"]);
  });

  it("keeps a chart and the rules for what may be typed, byte for byte", () => {
    const after =
      '<dataValidations count="1"><dataValidation type="list" sqref="A1"><formula1>"20,21"</formula1></dataValidation></dataValidations><drawing r:id="rId1"/>';
    const parts = { "xl/drawings/drawing1.xml": "<drawing/>", "xl/charts/chart1.xml": '<chart a="1" />' };
    const what = {
      ...LOGS,
      after,
      parts,
      sheetRelations: [["drawing", "../drawings/drawing1.xml"]] as [string, string][],
    };
    const { sheet, diff } = savedWith(what, [change(0, 0, 21), change(8, 3, "new")]);
    expect(diff).toEqual({ changed: [SHEET], added: [], removed: [] });
    expect(sheet.endsWith(`${after}</worksheet>`)).toBe(true);
    expect(cellXml(sheet, "D9")).toContain("new");
  });

  it("refuses another heading of a table's column, which would damage the file, and takes what stands below it", () => {
    const table =
      '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Yard" displayName="Yard" ref="A1:B3"><tableColumns count="2"><tableColumn id="1" name="20"/><tableColumn id="2" name="40"/></tableColumns></table>';
    const what = {
      ...LOGS,
      parts: { "xl/tables/table1.xml": table },
      sheetRelations: [["table", "../tables/table1.xml"]] as [string, string][],
    };
    expect(() => savedWith(what, [change(0, 1, "Length")])).toThrow(
      "Logs!B1 is the heading of a column of the table Yard, which formulas call by it: undo that with Ctrl+Z and rename the column in Excel",
    );
    expect(savedWith(what, [change(1, 1, 12)]).diff.changed).toEqual([SHEET]);
  });

  it("refuses two sheets of one name, and a sheet that is not there", () => {
    const twin = { id: "r", name: "logs", looks: "", hidden: false, cells: [change(0, 0, 1)] };
    const frame = { widths: {}, heights: {}, merges: [], frozen: { rows: 0, columns: 0 } };
    expect(() => savedWith(LOGS, [], { added: [{ ...twin, frame }] })).toThrow("it has two sheets called logs");
    expect(() => savedWith(LOGS, [], { cells: [{ sheet: "Boards", cells: [change(0, 0, 1)] }] })).toThrow(
      "it has no sheet Boards, on which something was typed",
    );
  });
});
