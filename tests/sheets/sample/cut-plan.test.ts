import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine, type OpenedWorkbook } from "../../../src/engine/engine";
import { readWorkbook } from "../../../src/engine/workbook/read";
import { SAMPLE } from "./parts";

const SHEET = "Cut plan";

let engine: Engine;
let saved: OpenedWorkbook;
beforeAll(async () => {
  engine = await startEngine();
  saved = await engine.open(readFileSync(SAMPLE));
});
afterAll(() => engine.stop());

/** The sample with another value typed beside a setting of the sheet Cut plan. */
async function withSetting(name: string, value: string): Promise<OpenedWorkbook> {
  const file = await readWorkbook(readFileSync(SAMPLE));
  const { cells } = file.sheets.find((sheet) => sheet.name === SHEET)!;
  const { row } = cells.find((cell) => cell.value === name && !cell.formula)!;
  cells.find((cell) => cell.row === row && cell.column === 1)!.value = value;
  return engine.calculate(file);
}

function figure(book: OpenedWorkbook, label: string) {
  const rows = Array.from({ length: 90 }, (_, i) => i + 1);
  return book.value(SHEET, `B${rows.find((row) => book.value(SHEET, `A${row}`) === label)}`);
}

const CHANGES = [
  "A thinner blade",
  "Live, through and through",
  "Live-edge slabs",
  "A cant of the widths in the settings",
  "Quartersawn",
  "Opened there",
];

describe("the sheet Cut plan of the sample workbook", () => {
  it("follows its settings in every line", async () => {
    const plain = (book: OpenedWorkbook, label: string) =>
      Number(figure(book, label)) + Number(figure(book, "Board feet of the plan"));
    const longTrim = await withSetting("trim", "40");
    for (const label of CHANGES) expect(plain(longTrim, label), label).toBeLessThan(plain(saved, label) - 1);
  });

  it("tries the cant widths that the reader types, and nothing else changes", async () => {
    const narrow = await withSetting("cant widths", "4");
    const cant = "A cant of the widths in the settings";
    expect(figure(narrow, cant)).not.toBe(figure(saved, cant));
    for (const label of CHANGES.filter((one) => one !== cant)) expect(figure(narrow, label)).toBe(figure(saved, label));
  });

  it("takes over every setting when the first cut is moved, those of a later row too", async () => {
    const file = await readWorkbook(readFileSync(SAMPLE));
    const moved = file.names.find(({ name }) => name === "Moved_settings")!.refersTo;
    const [first, last] = [...moved.matchAll(/\$A\$(\d+)|\$B\$(\d+)/g)].map(([, a, b]) => Number(a ?? b));
    expect(last! - first!).toBe(8);
    const names = Array.from({ length: 9 }, (_, i) => saved.value(SHEET, `A${first! + i}`));
    expect(names).toEqual([
      "large end",
      "trim",
      "minimum width",
      "bed clearance",
      "cant widths",
      "",
      "",
      "",
      "first cut",
    ]);
  });

  it("plans what its mill sheet lists", () => {
    expect(saved.value("Mill sheet live", "B5")).toBe(figure(saved, "Log"));
    expect(saved.value("Mill sheet live", "H8")).toBeCloseTo(Number(figure(saved, "Board feet of the plan")), 9);
  });
});
