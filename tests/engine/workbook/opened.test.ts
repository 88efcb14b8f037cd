import { readFileSync } from "node:fs";
import { join } from "node:path";
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

/**
 * A workbook that another writer made (exceljs 4.4.0), with stored names, tables, spilled answers, a name with a remark
 * in single quotes, links, dates and rich text; every cached value is wrong.
 */
const written = () => readFileSync(join(import.meta.dirname, "opened.xlsx"));

describe("an opened workbook", () => {
  let engine: Engine;
  let opened: OpenedWorkbook;
  beforeAll(async () => {
    engine = await startEngine(probes);
    opened = await engine.open(written());
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
    const again = await engine.open(written());
    expect(again.value("Log book", "C7")).toBe(6);
    expect(opened.value("Log book", "C7")).toBe(6);
  });
  it("refuses what is no workbook", async () => {
    await expect(engine.open(new TextEncoder().encode("no workbook"))).rejects.toThrow();
    expect(await engine.evaluate(["=1+1"])).toEqual([2]);
  });
});
