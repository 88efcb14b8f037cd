import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import ts from "typescript";
import type { FakeCell, FakeSheet, FakeWorkbook } from "./fake-cells";

/** The fake files as one script: types taken off, imports and exports dropped. */
const SCRIPT = ["fake-cells.ts", "fake-host.ts", "fake-range.ts", "fake-pages.ts", "fake-sheet.ts", "fake-excel.ts"]
  .map((file) => readFileSync(join(import.meta.dirname, file), "utf8"))
  .map((source) => ts.transpile(source, { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext }))
  .map((script) => script.replace(/^import .*$/gm, "").replace(/^export /gm, ""))
  .join("\n");

/** Gives the page a stand-in of Excel with a workbook in it. */
export async function standIn(page: Page, book: FakeWorkbook): Promise<void> {
  await page.evaluate(`{ ${SCRIPT}
    const book = ${JSON.stringify(book)};
    const { Excel, isSetSupported } = fakeExcel(book);
    Object.assign(window, { Excel, standIn: book });
    Object.defineProperty(Office.context, "requirements", { value: { isSetSupported }, configurable: true });
  }`);
}

/** Cells that hold plain values or, from `=` on, formulas with the value 0. */
export function plainCells(held: Record<string, unknown>): Record<string, FakeCell> {
  const cell = (content: unknown): FakeCell =>
    typeof content === "string" && content.startsWith("=") ? { formula: content, value: 0 } : { value: content };
  return Object.fromEntries(Object.entries(held).map(([address, content]) => [address, cell(content)]));
}

/** Chooses other cells, as a click in the sheet does. */
export async function choose(page: Page, chosen: string): Promise<void> {
  await page.evaluate((area) => ((window as unknown as { standIn: FakeWorkbook }).standIn.chosen = area), chosen);
}

/** The workbook as it is now. */
export function workbook(page: Page): Promise<FakeWorkbook> {
  return page.evaluate(() => (window as unknown as { standIn: FakeWorkbook }).standIn);
}

export async function sheetNamed(page: Page, name: string): Promise<FakeSheet> {
  const { sheets } = await workbook(page);
  const sheet = sheets[name];
  if (!sheet) throw new Error(`There is no sheet ${name}, only ${Object.keys(sheets).join(", ")}`);
  return sheet;
}

/** What the cells of a sheet hold: a formula, or a value. */
export async function contents(page: Page, name: string): Promise<Record<string, unknown>> {
  const { cells } = await sheetNamed(page, name);
  return Object.fromEntries(Object.entries(cells).map(([address, { formula, value }]) => [address, formula ?? value]));
}
