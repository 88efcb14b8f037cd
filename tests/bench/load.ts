import { startEngine } from "../../src/engine/engine";
import { openBrowser } from "../browser";
import { builtFolder } from "../hosts/excel/build";
import { visitFunctions } from "../hosts/excel/browser-page";
import { answersInExcelHost } from "../trust/excel-host";
import {
  FIGURE_COLUMNS,
  isTheSameTo12Digits,
  logBook,
  SHEET,
  SPILLED_COLUMN,
  spilledLogBook,
  wrongFigures,
} from "../trust/log-book";

/**
 * A log book of 100,000 rows with scale, weight and price: how long it takes and how much memory, in the try-out engine
 * and in Excel's host in the browser. Every figure of every row is compared with the bare formula.
 */
const ROWS = 100_000;
const FIGURES = FIGURE_COLUMNS.length;
const MEGABYTE = 1024 * 1024;

const engine = await startEngine();
await openedInEngine(`${ROWS * FIGURES} formulas`, FIGURES, await logBook(ROWS), (row, figure) => [
  SHEET,
  `${FIGURE_COLUMNS[figure]}${row + 1}`,
]);
await openedInEngine("one formula that spills", 1, await spilledLogBook(ROWS), (row) => [
  SHEET,
  `${SPILLED_COLUMN}${row + 1}`,
]);
engine.stop();

const browser = await openBrowser();
await askedInExcelHost("one call of the whole column each", ROWS);
await askedInExcelHost("100,000 calls of one row each", 1);
await browser.close();

async function openedInEngine(
  what: string,
  figures: number,
  file: Uint8Array,
  place: (row: number, figure: number) => [sheet: string, address: string],
): Promise<void> {
  let peak = 0;
  const watch = setInterval(() => (peak = Math.max(peak, process.memoryUsage.rss())), 100);
  const started = performance.now();
  const opened = await engine.open(file);
  const seconds = (performance.now() - started) / 1000;
  clearInterval(watch);
  const wrong = wrongFigures(ROWS, figures, (row, figure) => opened.value(...place(row, figure)), isTheSameTo12Digits);
  mustBeRight(wrong);
  console.log(
    `${ROWS} log rows in the try-out engine, ${what}: ${seconds.toFixed(1)} s to read and calculate, ` +
      `at most ${(peak / MEGABYTE).toFixed(0)} MB of memory; no row lost`,
  );
}

async function askedInExcelHost(what: string, rowsACall: number): Promise<void> {
  const { page } = await visitFunctions(browser, await builtFolder());
  const { figures, tookMs } = await answersInExcelHost(page, ROWS, rowsACall);
  mustBeRight(wrongFigures(ROWS, FIGURES, (row, figure) => figures[figure]![row]));
  const devtools = await page.context().newCDPSession(page);
  const { usedSize } = await devtools.send("Runtime.getHeapUsage");
  await page.close();
  const [scale, weight, price] = tookMs.map((ms) => ms.toFixed(0));
  console.log(
    `${ROWS} log rows in Excel's host in the browser, ${what}: scale ${scale} ms, weight ${weight} ms, ` +
      `price ${price} ms, ${(usedSize / MEGABYTE).toFixed(0)} MB held afterwards; no row lost`,
  );
}

function mustBeRight(wrong: string[]): void {
  if (wrong.length > 0) throw new Error(`Figures went wrong: ${wrong.join("; ")}`);
}
