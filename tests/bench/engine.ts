import type { IWorkbookData } from "@univerjs/core";
import * as bole from "../../src/functions";
import { keepTextLiterals } from "../../src/engine/literals";
import { Messages } from "../../src/engine/messages";
import { loadSpreadsheet } from "../../src/engine/node";
import { registerAll } from "../../src/engine/register";
import { buildPage } from "../../src/hosts/tryout/build";
import { servePage } from "../../src/hosts/tryout/server";
import { openBrowser } from "../browser";
import { median } from "./side-by-side";

/**
 * What our functions cost in the try-out spreadsheet: 20,000 rows with BOLE.LOGSCALE by Doyle against the same formula
 * typed natively, calculated in turn in one process. And the page: from the address to the first answer.
 */
const ROWS = 20_000;
const RUNS = 9;
const PAGE_RUNS = 5;

const spreadsheet = loadSpreadsheet();
const { api, injector, parts } = spreadsheet;
api.createWorkbook({ id: "empty", sheetOrder: ["s"], sheets: { s: { id: "s" } } });
const functions = injector.get(parts.IFunctionService);
registerAll(bole, { parts, functions, messages: new Messages() });
keepTextLiterals(functions, parts);

const ours = (row: number) => `=BOLE.LOGSCALE(A${row},B${row},"Doyle")`;
const native = (row: number) => `=((A${row}-4)/4)^2*B${row}`;
const times: { ours: number[]; native: number[] } = { ours: [], native: [] };
for (let run = -1; run < RUNS; run++) {
  const [one, other] = [await calculate(ours), await calculate(native)];
  if (run < 0) continue; // the first run warms up
  times.ours.push(one);
  times.native.push(other);
}
spreadsheet.dispose();
console.log(
  `${ROWS} rows in the try-out engine: BOLE.LOGSCALE ${median(times.ours).toFixed(0)} ms, the same typed natively ` +
    `${median(times.native).toFixed(0)} ms of processor time; ratio ${(median(times.ours) / median(times.native)).toFixed(2)} (aim at most 1.1)`,
);

await buildPage();
const server = await servePage({ snapshot: workbook("page", 1, ours), bytes: new Uint8Array() }, 0);
const browser = await openBrowser();
const loads: number[] = [];
for (let run = 0; run < PAGE_RUNS; run++) loads.push(await loadPage());
await browser.close();
await server.close();
console.log(`The page from its address to the first answer: ${median(loads).toFixed(0)} ms (middle of ${PAGE_RUNS})`);

/** A log of 20 in and 12 ft a row, and a column of formulas. */
function workbook(id: string, rows: number, formula: (row: number) => string): IWorkbookData {
  const cellData = Object.fromEntries(
    Array.from({ length: rows }, (_, at) => [
      at,
      { 0: { v: 20, t: 2 }, 1: { v: 12, t: 2 }, 2: { f: formula(at + 1) } },
    ]),
  );
  const sheet = { id: "s", name: "Logs", rowCount: rows + 1, columnCount: 3, cellData };
  return { id, name: id, sheetOrder: ["s"], sheets: { s: sheet }, styles: {} } as unknown as IWorkbookData;
}

/** Milliseconds of processor time that one calculation of all rows takes; other programs do not count. */
async function calculate(formula: (row: number) => string): Promise<number> {
  const book = api.createWorkbook(workbook("rows", ROWS, formula));
  await api.getFormula().onCalculationResultApplied();
  const calculator = injector.get(parts.ICalculateFormulaService);
  let started = 0;
  const done = new Promise<number>((resolve) => {
    const ending = calculator.executionCompleteListener$.subscribe(() => {
      ending.unsubscribe();
      resolve(processorMs() - started);
    });
  });
  const beginning = calculator.executionInProgressListener$.subscribe(() => {
    started ||= processorMs();
  });
  api.getFormula().executeCalculation();
  const taken = await done;
  beginning.unsubscribe();
  await api.getFormula().onCalculationResultApplied();
  const last = book
    .getSheets()[0]
    ?.getSheet()
    .getCell(ROWS - 1, 2)?.v;
  if (last !== 192) throw new Error(`The last row answered ${String(last)}, not 192`);
  api.disposeUnit("rows");
  return taken;
}

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

async function loadPage(): Promise<number> {
  const page = await browser.newPage();
  const started = performance.now();
  await page.goto(server.address);
  await page.waitForSelector("#cell h2");
  const taken = performance.now() - started;
  await page.close();
  return taken;
}
