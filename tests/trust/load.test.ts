import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../src/engine/engine";
import { openBrowser } from "../browser";
import { builtFolder } from "../hosts/excel/build";
import { visitFunctions } from "../hosts/excel/browser-page";
import { answersInExcelHost } from "./excel-host";
import { blockOf } from "../../src/formula/addresses";
import { cellIn, newSheet } from "../../src/xlsx/write/book";
import {
  bookOf,
  FIGURE_COLUMNS,
  isTheSameTo12Digits,
  logBook,
  SHEET,
  SPILLED_COLUMN,
  spilledLogBook,
  wrongFigures,
} from "./log-book";

/** Fewer rows than `npm run bench` takes, every one of them checked. */
const ENGINE_ROWS = 10_000;
const HOST_ROWS = 20_000;
const PATIENCE_MS = 600_000;

describe("a log book of 10,000 rows in the try-out engine", () => {
  let engine: Engine;
  beforeAll(async () => void (engine = await startEngine()));
  afterAll(() => engine.stop());

  it(
    "keeps scale, weight and price of every row, blank and unreadable ones too",
    async () => {
      const opened = await engine.open(await logBook(ENGINE_ROWS));
      const figureAt = (row: number, figure: number) => opened.value(SHEET, `${FIGURE_COLUMNS[figure]}${row + 1}`);
      expect(wrongFigures(ENGINE_ROWS, FIGURE_COLUMNS.length, figureAt, isTheSameTo12Digits)).toEqual([]);
    },
    PATIENCE_MS,
  );

  it(
    "answers all of them from one formula that spills",
    async () => {
      const opened = await engine.open(await spilledLogBook(ENGINE_ROWS));
      const scaleAt = (row: number) => opened.value(SHEET, `${SPILLED_COLUMN}${row + 1}`);
      expect(wrongFigures(ENGINE_ROWS, 1, scaleAt, isTheSameTo12Digits)).toEqual([]);
    },
    PATIENCE_MS,
  );

  it("still looks up what the cells hold after the last change, not before it", async () => {
    const opened = await engine.open(lookedUp());
    const shown = (address: string) => opened.value("Looked up", address);
    expect(["F1", "F2", "F3", "F4", "F5"].map(shown)).toEqual([2, 3, 2, 1, true]);
  });
});

/** Column B leans on a spilled answer, so it is calculated twice; column F looks things up in B both times. */
function lookedUp(): Uint8Array {
  const sheet = newSheet("Looked up", { landscape: true, onePage: false, footer: "" });
  const formula = (address: string, text: string, fills?: string) => {
    cellIn(sheet, address).content = { formula: text, result: -1, ...(fills ? { fills: blockOf(fills) } : {}) };
  };
  formula("D9", '_xldudf_BOLE_LOGSCALE({12;16;20;20;24},12,"Doyle")', "D9:D13");
  for (const row of [1, 2, 3, 4]) formula(`B${row}`, `D${row + 9}+0`);
  formula("F1", "COUNTIF(B1:B4,192)");
  formula("F2", "SUM((B1:B4>=192)*1)");
  formula("F3", "MATCH(192,B1:B4,0)");
  formula("F4", "_xlfn.XLOOKUP(108,B1:B4,{1;2;3;4})");
  formula("F5", "B4=300");
  return bookOf(sheet);
}

describe("a log book of 20,000 rows in Excel's host", () => {
  let browser: Browser;
  beforeAll(async () => void (browser = await openBrowser()));
  afterAll(() => browser.close());

  it.each([
    ["in one call of a whole column", HOST_ROWS],
    ["in calls of one row", 1],
    ["in calls of 1,000 rows", 1_000],
  ])(
    "keeps every figure to the last bit %s",
    async (_, rowsACall) => {
      const { page } = await visitFunctions(browser, await builtFolder());
      const { figures } = await answersInExcelHost(page, HOST_ROWS, rowsACall);
      await page.close();
      expect(wrongFigures(HOST_ROWS, FIGURE_COLUMNS.length, (row, figure) => figures[figure]![row])).toEqual([]);
    },
    PATIENCE_MS,
  );
});
