import { basename } from "node:path";
import type { IWorkbookData } from "@univerjs/core";
import type { Browser, Page } from "playwright-core";
import { expect } from "vitest";
import { buildPage } from "../../../src/hosts/tryout/build";
import { startEngine, type OpenedWorkbook } from "../../../src/engine/engine";
import { withFreeSheet } from "../../../src/hosts/tryout/free-sheet";
import { openWorkbook, SAMPLE, workbookBytes } from "../../../src/hosts/terminal/sample";
import { servePage } from "../../../src/hosts/tryout/server";
import { addressOf, cellAt } from "../../../src/formula/addresses";

export type TryOut = Awaited<ReturnType<typeof openTryOut>>;

/** A workbook file, the sample where none is named, and the free sheet in the try-out page, and a person's ways about it. */
export async function openTryOut(
  browser: Browser,
  prepare: (workbook: IWorkbookData) => void = () => undefined,
  path = SAMPLE,
) {
  await buildPage();
  const { workbook, snapshot } = await opened(path);
  prepare(snapshot);
  const server = await servePage({ snapshot, bytes: await workbookBytes(path) }, 0);
  const page = await browser.newPage({ viewport: { width: 1400, height: 850 } });
  const asked: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => ["error", "warning"].includes(message.type()) && complaints.push(message.text()));
  page.on("pageerror", (fault) => complaints.push(fault.message));
  page.on("dialog", (dialog) => complaints.push(`A dialog: ${dialog.message()}`));
  await page.goto(server.address);

  /** Waits until the panel says so of the chosen cell. */
  const says = async (text: string): Promise<void> => {
    await page.waitForFunction((wanted) => document.querySelector("#cell")?.textContent?.includes(wanted), text);
  };
  const openTab = async (name: string): Promise<void> => {
    await page.getByText(name, { exact: true }).last().click();
    await says(`${name}, A1`);
  };
  /** Goes to cells by the box that names them; the panel speaks of the first. */
  const select = async (cells: string): Promise<void> => {
    const box = page.locator("#grid input").first();
    await box.click();
    await box.fill(cells);
    await box.press("Enter");
    await says(`, ${cells.split(":")[0]}`);
  };
  /** Goes to a cell, then types as a person would. */
  const type = async (address: string, text: string): Promise<void> => {
    await select(address);
    await page.keyboard.type(text);
    await suggestionsAreGone(page);
    await page.keyboard.press("Enter");
    const { row, column } = cellAt(address);
    await says(`, ${addressOf(row + 1, column)}`);
  };
  const answerIn = async (address: string): Promise<string> => {
    await select(address);
    await page.waitForSelector("#cell .answer");
    return page.innerText("#cell .answer");
  };
  /** What a cell answers once the sheet has calculated: asked again until it does, since a busy machine takes its time. */
  const answering = (address: string, as: (answer: string) => unknown = String) =>
    expect.poll(async () => as(await answerIn(address)));

  await says(`${snapshot.sheets[snapshot.sheetOrder[0]!]!.name}, A1`);
  const { address, close } = server;
  return { page, address, close, workbook, asked, complaints, says, openTab, select, type, answering };
}

async function opened(path: string): Promise<{ workbook: OpenedWorkbook; snapshot: IWorkbookData }> {
  const engine = await startEngine();
  const workbook = await openWorkbook(engine, path);
  engine.stop();
  return { workbook, snapshot: { ...withFreeSheet(workbook.snapshot), name: basename(path) } };
}

/** While a list of suggestions is open Enter chooses from it; it closes a moment after the last letter of a name. */
async function suggestionsAreGone(page: Page): Promise<void> {
  await page.waitForTimeout(250);
  await page.waitForFunction(() => !document.querySelector("ul[data-u-comp=sheets-formula-editor]"));
}
