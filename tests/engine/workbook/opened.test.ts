import ExcelJS from "exceljs";
import JSZip from "jszip";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine, type OpenedWorkbook } from "../../../src/engine/engine";

const probes = {
  ECHO: (cells: unknown[][]) => cells,
  REFUSES: (cells: unknown[][]) =>
    cells.map((row) => row.map((cell) => (cell === 0 ? { error: "#N/A", message: "nothing to scale" } : cell))),
  PLAN: () => [
    ["pass", "size"],
    [1, "5/4"],
    [2, { error: "#N/A", message: "the log is used up" }],
  ],
};

/** A name with the maker's remark, as other programs may write it: single quotes, signs spelt out. */
const FIRST_NET = `<definedName name='First_net' comment="net &amp; only">&apos;Log book&apos;!$B$4</definedName>`;

const formula = (text: string, result: unknown = 0, more: object = {}) =>
  ({ formula: text, result, ...more }) as ExcelJS.CellFormulaValue;

/** A workbook as ours is written: stored names, tables, spilled answers, names; every cached value is wrong. */
async function written(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const logs = workbook.addWorksheet("Log book");
  logs.addTable({
    name: "Logs",
    ref: "A3",
    headerRow: true,
    totalsRow: true,
    columns: [{ name: "Dia" }, { name: "Net, bf" }, { name: "BF", totalsRowFunction: "sum" }],
    rows: [
      ["5/4", 1, formula("_xldudf_BOLE_ECHO(Logs[[#This Row],[Net, bf]])")],
      [21, 2, formula("_xldudf_BOLE_ECHO([@[Net, bf]])")],
      [0, 3, formula("_xldudf_BOLE_ECHO(Logs[@[Net, bf]])")],
    ],
  });
  logs.getCell("E1").value = formula("_xldudf_BOLE_PLAN()", "", { shareType: "array", ref: "E1:F3" });
  logs.getCell("E2").value = 77;
  logs.getCell("H1").value = formula("_xldudf_BOLE_REFUSES(A6)");
  logs.getCell("H2").value = formula("COUNTA(E1#)");
  logs.getCell("H3").value = formula("COUNTA(_xlfn.ANCHORARRAY(E1))");
  logs.getCell("H4").value = formula("1=1", false);
  logs.getCell("H5").value = new Date(Date.UTC(2026, 1, 3));
  logs.getCell("H5").numFmt = "yyyy-mm-dd";
  logs.getCell("H6").value = formula("H5+1", new Date(Date.UTC(2026, 1, 4)));
  logs.getCell("H7").value = { richText: [{ text: "red " }, { text: "oak" }] };
  logs.getCell("H8").value = "to the sums";
  logs.getCell("H9").value = { text: "elsewhere", hyperlink: "https://example.com/a!b" };
  const sums = workbook.addWorksheet("It's summed");
  sums.getCell("A1").value = formula("SUM(Logs[Net, bf])");
  sums.getCell("A2").value = formula("_xlfn.LET(_xlpm.n,First_net,_xlpm.n*10)");
  sums.getCell("A3").value = formula("_xlfn._xlws.FILTER(Logs[Net, bf],Logs[Net, bf]>1)", 0, {
    shareType: "array",
    ref: "A3:A4",
  });
  sums.getCell("A6").value = formula("COUNTA('Log book'!E1#)");
  sums.getCell("B6").value = formula("First_net + 1");
  sums.getCell("B7").value = formula("2 * First_net - First_net");
  sums.getCell("A7").value = 1234.5;
  sums.getCell("A7").numFmt = "$#,##0.00";
  workbook.definedNames.add("'Log book'!$B$4", "First_net");
  const zip = await JSZip.loadAsync(await workbook.xlsx.writeBuffer());
  const part = "xl/worksheets/sheet1.xml";
  const xml = (await zip.file(part)?.async("string")) ?? "";
  zip.file(part, xml.replace("<hyperlinks>", `<hyperlinks><hyperlink ref="H8" location="'It''s summed'!A1"/>`));
  const names = (await zip.file("xl/workbook.xml")?.async("string")) ?? "";
  zip.file("xl/workbook.xml", names.replace(/<definedName .*<\/definedName>/, FIRST_NET));
  return zip.generateAsync({ type: "uint8array" });
}

describe("an opened workbook", () => {
  let engine: Engine;
  let opened: OpenedWorkbook;
  beforeAll(async () => {
    engine = await startEngine(probes);
    opened = await engine.open(await written());
  });
  afterAll(() => engine.stop());

  it.each([
    ["Log book", "C4", 1],
    ["Log book", "C5", 2],
    ["Log book", "C6", 3],
    ["Log book", "C7", 6],
    ["Log book", "E1", "pass"],
    ["Log book", "E2", 1],
    ["Log book", "F2", "5/4"],
    ["Log book", "H2", 6],
    ["Log book", "H3", 6],
    ["Log book", "H4", true],
    ["Log book", "H5", 46056],
    ["Log book", "H6", 46057],
    ["Log book", "H7", "red oak"],
    ["Log book", "A4", "5/4"],
    ["Log book", "Z99", ""],
    ["It's summed", "A1", 6],
    ["It's summed", "A2", 10],
    ["It's summed", "A3", 2],
    ["It's summed", "A4", 3],
    ["It's summed", "A6", 6],
    ["It's summed", "B6", 2],
    ["It's summed", "B7", 1],
  ])("%s, %s is calculated afresh", (sheet, address, expected) => {
    expect(opened.value(sheet, address)).toEqual(expected);
  });
  it("keeps the reason of an error, in a spilled answer too", () => {
    expect(opened.value("Log book", "H1")).toEqual({ error: "#N/A", message: "nothing to scale" });
    expect(opened.value("Log book", "F3")).toEqual({ error: "#N/A", message: "the log is used up" });
  });
  it("lists every calculating cell with what the file said of it", () => {
    const cells = opened.formulaCells();
    expect(cells.find(({ address, sheet }) => sheet === "Log book" && address === "C5")).toEqual({
      sheet: "Log book",
      address: "C5",
      formula: "=BOLE.ECHO($B5)",
      stored: "_xldudf_BOLE_ECHO([@[Net, bf]])",
      cached: 0,
      recalculated: 2,
    });
    expect(cells).toHaveLength(16);
  });
  it("shows figures in their number format", () => {
    expect(opened.text("It's summed", "A7")).toBe("$1,234.50");
    expect(opened.text("Log book", "H5")).toBe("2026-02-03");
    expect(opened.text("Log book", "H1")).toBe("#N/A");
  });
  it("knows its sheets and names, and says so when asked for another", () => {
    expect(opened.sheets).toEqual(["Log book", "It's summed"]);
    expect(opened.names).toEqual([{ name: "First_net", refersTo: "'Log book'!$B$4", comment: "net & only" }]);
    expect(() => opened.value("Logs", "A1")).toThrow("The workbook has no sheet Logs; it has Log book, It's summed");
  });
  it("knows where its links lead within the workbook", () => {
    const cells = Object.values(opened.snapshot.sheets)[0]?.cellData;
    expect(cells?.[7]?.[7]).toMatchObject({ v: "to the sums", custom: { leadsTo: "It's summed" } });
    expect(cells?.[8]?.[7]).toMatchObject({ v: "elsewhere" });
    expect(cells?.[8]?.[7]).not.toHaveProperty("custom");
  });
  it("can be opened beside another", async () => {
    const again = await engine.open(await written());
    expect(again.value("Log book", "C7")).toBe(6);
    expect(opened.value("Log book", "C7")).toBe(6);
  });
  it("refuses what is no workbook", async () => {
    await expect(engine.open(new TextEncoder().encode("no workbook"))).rejects.toThrow();
    expect(await engine.evaluate(["=1+1"])).toEqual([2]);
  });
});
