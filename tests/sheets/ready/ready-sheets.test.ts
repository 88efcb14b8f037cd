import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { READY_SHEETS } from "../../../src/sheets/ready";
import { addressOf } from "../../../src/formula/addresses";
import { laidOut } from "../../../src/sheets/laid-out";
import { LOGWEIGHT } from "../../../src/functions";
import { startEngine, type Engine } from "../../../src/engine/engine";
import { scaleFor } from "../../../src/sheets/paper";
import { expandTables, type Table } from "../../../src/formula/tables";
import { calculated, inCells } from "./calculated";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

describe.each(READY_SHEETS)("$title", (sheet) => {
  const cellsStyle = inCells(sheet.title);
  const tableStyle = laidOut(sheet, { sheet: sheet.title, table: `${sheet.table}2` }, "table");

  it("answers its example rows and leaves unfilled rows at 0 or empty", async () => {
    const { formulaCells } = await calculated(engine, cellsStyle);
    expect(formulaCells.length).toBeGreaterThan(sheet.blankRows);
    expect(formulaCells.filter(({ recalculated }) => typeof recalculated === "object")).toEqual([]);
    const columns = sheet.columns.flatMap(({ formula }, i) => (formula ? [i + 1] : []));
    const unfilled = formulaCells.filter(({ address }) => {
      const row = Number(address.replace(/\D/g, ""));
      return (
        row > cellsStyle.table.headerRow + sheet.examples.length &&
        columns.some((column) => address === addressOf(row - 1, column - 1))
      );
    });
    expect(unfilled.length).toBe(sheet.blankRows * columns.length);
    expect(unfilled.filter(({ recalculated }) => recalculated !== 0 && recalculated !== "")).toEqual([]);
  });

  it("shows no error anywhere when the examples are wiped out", async () => {
    const { formulaCells } = await calculated(engine, cellsStyle, true);
    expect(formulaCells.filter(({ recalculated }) => typeof recalculated === "object")).toEqual([]);
  });

  it("prints no smaller than 8 points", () => {
    const { landscape, pageStarts, scale, lastColumn } = cellsStyle.paper;
    const printed = cellsStyle.widths.slice(0, lastColumn + 1);
    const percent = scale ?? scaleFor(printed, pageStarts, { landscape, repeats: false });
    expect(percent).toBeGreaterThanOrEqual(80);
  });

  it("names the same cells by table columns and by addresses", () => {
    const { headerRow, lastRow, columns } = tableStyle.table;
    const table: Table = {
      name: tableStyle.table.name,
      sheet: sheet.title,
      columns: columns.map(({ heading }) => heading),
      block: { top: headerRow - 1, left: 0, bottom: lastRow - 1, right: columns.length - 1 },
      headings: true,
      totals: false,
    };
    const plain = (formula: string) => formula.replaceAll("$", "");
    const byTable = tableStyle.cells.filter(({ isFormula }) => isFormula);
    const byCells = cellsStyle.cells.filter(({ isFormula }) => isFormula);
    expect(byTable.some(({ content }) => String(content).includes("["))).toBe(true);
    expect(
      byTable.map(({ content, row, column }) =>
        plain(expandTables(String(content), [table], { sheet: sheet.title, row: row - 1, column: column - 1 })),
      ),
    ).toEqual(byCells.map(({ content }) => plain(String(content))));
  });

  it("keeps sizes as text, so that 5/4 and 8-6 stay what was typed", () => {
    const texts = sheet.columns.filter(({ kind }) => kind === "text").map(({ heading }) => heading);
    const settings = sheet.settings.filter(({ kind }) => kind === "text");
    expect(texts.length + settings.length).toBeGreaterThan(0);
    for (const heading of texts) {
      const column = sheet.columns.findIndex((one) => one.heading === heading) + 1;
      const cells = cellsStyle.cells.filter(
        (cell) => cell.column === column && cell.row > cellsStyle.table.headerRow && cell.look === "entry",
      );
      expect(cells.every(({ format, content }) => format === "@" && typeof content === "string")).toBe(true);
    }
  });

  it("says whether Bole is there, that its rows are invented, and what can hurt", () => {
    const contents = cellsStyle.cells.map(({ content }) => String(content));
    expect(contents).toContain("=BOLE.VERSION()");
    expect(contents.some((text) => /#NAME\?.*My Add-ins/.test(text))).toBe(true);
    expect(JSON.stringify([sheet.examples, sheet.settings])).toMatch(/invented/i);
    expect(contents.some((text) => text.startsWith("Caution: "))).toBe(true);
  });

  it("has headings that a table takes: short, each once, without signs that references use", () => {
    const headings = sheet.columns.map(({ heading }) => heading);
    expect(new Set(headings.map((heading) => heading.toLowerCase())).size).toBe(headings.length);
    for (const heading of headings) expect(heading).toMatch(/^[\w /-]{2,20}$/);
    expect(sheet.table).toMatch(/^[A-Z][A-Za-z]+$/);
  });

  it("gives every example only to columns that are typed into", () => {
    const typed = sheet.columns.filter(({ formula }) => !formula).map(({ heading }) => heading);
    for (const row of sheet.examples) for (const heading of Object.keys(row)) expect(typed).toContain(heading);
  });
});

describe("figures worked by hand", () => {
  it("log book: 20 in by 8 ft is 137.25 by International 1/4, 10 % off leaves 123.53; a butt of 24 in leaves 11 of 36", async () => {
    const { cell, figure } = await calculated(engine, inCells("Log book"));
    // Two sections of 4 ft, 20 and 20 1/2 in at their small ends: 0.904762 (0.22 D² - 0.71 D) each.
    const gross = 0.904762 * (0.22 * 20 ** 2 - 0.71 * 20 + 0.22 * 20.5 ** 2 - 0.71 * 20.5);
    expect(cell("Dia", 1)).toBe(20);
    expect(cell("Scaled ft", 1)).toBe(8);
    expect(cell("Board feet", 1)).toBeCloseTo(gross, 9);
    expect(cell("Net", 1)).toBeCloseTo(0.9 * gross, 9);
    expect(figure("Net board feet")).toBeCloseTo(0.9 * gross, 9);
    // The wider reading of the butt is 24 in, and an inch is kept clear of the log.
    expect(cell("Room inches", 1)).toBeCloseTo(36 - 24 - 1, 9);
    expect(cell("Verdict", 1)).toBe("fits");
    expect(figure("Heaviest log, lb")).toBe(cell("Weight lb", 1));
    expect(Number(cell("Could be lb", 1))).toBeGreaterThan(Number(cell("Weight lb", 1)));
  });

  it("log book and load plan weigh the same log alike, with its bark on", async () => {
    const [book, plan] = [
      await calculated(engine, inCells("Log book")),
      await calculated(engine, inCells("Load plan")),
    ];
    expect([book.cell("Dia", 1), book.cell("Butt", 1)]).toEqual([20, 23.5]);
    expect([plan.cell("Small end", 1), plan.cell("Large end", 1)]).toEqual(["20", "23 1/2"]);
    for (const heading of ["Length", "Weight lb", "Could be lb"])
      expect(book.cell(heading, 1), heading).toBe(plan.cell(heading, 1));
    const [[withBark]] = LOGWEIGHT([["red maple"]], [[20]], [[23.5]], [[8.5]], [[null]], [["with"]]) as [[number]];
    expect(book.cell("Weight lb", 1)).toBeCloseTo(withBark, 6);
  });

  it("scale ticket: 192 and 105.625 and 72 by Doyle, 19 off for 3 in of sweep and 8 for rot of 4 by 3 in and 6 ft", async () => {
    const { cell, figure } = await calculated(engine, inCells("Scale ticket"));
    // ((D - 4) / 4)^2 L; (3 - 1) / 20 of 192 is 19.2; 5 times 4 times 6 over 15 is 8; each to the whole board foot.
    expect([1, 2, 3].map((row) => cell("Gross", row))).toEqual([192, 105.625, 72]);
    expect([1, 2, 3].map((row) => cell("Off", row))).toEqual([19, 8, 0]);
    expect(cell("Why off", 1)).toBe("sweep (3 - 1) / 20 of gross");
    expect(figure("Net board feet")).toBeCloseTo(192 + 105.625 + 72 - 27, 9);
    // 342.625 at 0.60 is 205.575, a half cent up.
    expect(figure("To pay")).toBeCloseTo(205.58, 9);
  });

  it("load plan: what is left is rating less empty less logs, and less still at worst", async () => {
    const { cell, figure } = await calculated(engine, inCells("Load plan"));
    const [one, two] = [Number(cell("Weight lb", 1)), Number(cell("Weight lb", 2))];
    expect(figure("Payload left")).toBeCloseTo(14000 - 4200 - one - two, 6);
    expect(Number(figure("Left at worst"))).toBeLessThan(Number(figure("Payload left")));
    const hitch = (one * 1.5 + two * 1) / 14 + 0.12 * 4200;
    expect(figure("On the hitch %")).toBeCloseTo((100 * hitch) / (4200 + one + two), 6);
    expect([cell("Tie-downs", 1), cell("Tie-downs", 2)]).toEqual([2, 2]);
  });

  it("cut plan: the board feet are those of the plan's own total", async () => {
    const { at, figure } = await calculated(engine, inCells("Cut plan"));
    const headings = Array.from({ length: 40 }, (_, i) => i + 1).map((row) => at(`F${row}`));
    const total = headings.indexOf("total");
    expect(total).toBeGreaterThan(0);
    expect(figure("Board feet")).toBe(at(`K${total + 1}`));
    expect(Number(figure("Board feet"))).toBeGreaterThan(100);
  });

  it("drying stack: 14 lb at 75 % holds 8 lb of wood, and 11.3 lb is 41.25 %", async () => {
    const { cell, figure } = await calculated(engine, inCells("Drying stack"));
    expect(figure("Board bone dry")).toBeCloseTo(8, 9);
    expect(figure("Board when ready")).toBeCloseTo(9.6, 9);
    expect([1, 2, 3].map((row) => Number(cell("Moisture", row)).toFixed(2))).toEqual(["75.00", "41.25", "27.50"]);
  });

  it("price list: 4.40 for a margin of 45 % is 8.00, and 8.50 leaves 48.2 %", async () => {
    const { cell } = await calculated(engine, inCells("Price list"));
    expect(cell("For the margin", 1)).toBeCloseTo(8, 9);
    expect(cell("Margin got", 1)).toBeCloseTo(4.1 / 8.5, 9);
    expect(cell("10 ft of 10 in", 2)).toBeCloseTo(((10 * 10) / 12) * 3.5, 9);
  });

  it("sawing bill: 80 ft and 48.875 ft at 0.55, and a blade for 28", async () => {
    const { cell, figure } = await calculated(engine, inCells("Sawing bill"));
    expect(cell("Board feet", 1)).toBeCloseTo(80, 9);
    expect(cell("Board feet", 2)).toBeCloseTo((2 * 11.5 * 8.5 * 3) / 12, 9);
    expect(figure("To pay")).toBeCloseTo((80 + 48.875) * 0.55 + 28, 1);
  });

  it("mill settings: 1160 rpm over 12.4 to 21.1 in turns a 28 in wheel at 4997 ft/min", async () => {
    const { cell } = await calculated(engine, inCells("Mill settings"));
    const rpm = (1160 * 12.4) / 21.1;
    expect(cell("Wheel rpm", 1)).toBeCloseTo(rpm, 6);
    expect(cell("Band speed", 1)).toBeCloseTo((Math.PI * 28 * rpm) / 12, 6);
    expect(cell("Against the limit", 1)).toBe("limit not given");
    expect(cell("Pull psi", 1)).toBeCloseTo(2200 / (2 * 1.25 * 0.042), 6);
  });
});
