import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Download } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../src/engine/engine";
import { readWorkbook, type FileCell, type FileWorkbook } from "../../../src/engine/workbook/read";
import { addressOf } from "../../../src/formula/addresses";
import { SAMPLE } from "../../../src/hosts/terminal/sample";
import { recalculated } from "../../../src/hosts/terminal/file/recalc";
import { openBrowser } from "../../browser";
import { axeComplaints, goTo } from "../excel/pane-page";
import { cellXml, differences, partsOf } from "../terminal/file/tiny";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let engine: Engine;
let sheet: TryOut;
beforeAll(async () => {
  browser = await openBrowser();
  engine = await startEngine();
  sheet = await openTryOut(browser);
});
afterAll(async () => {
  engine?.stop();
  await browser?.close();
  await sheet?.close();
});

const said = () => sheet.page.locator("#file-said").textContent();

async function fileOf(download: Download): Promise<string> {
  const path = join(mkdtempSync(join(tmpdir(), "bole-")), download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

async function savedCopy(): Promise<string> {
  const downloading = sheet.page.waitForEvent("download");
  await sheet.page.getByRole("button", { name: "Save a copy" }).click();
  return fileOf(await downloading);
}

function cellIn(workbook: FileWorkbook, name: string, address: string): FileCell | undefined {
  const { cells } = workbook.sheets.find((one) => one.name === name)!;
  return cells.find(({ row, column }) => addressOf(row, column) === address);
}

describe("saving what was typed into the sample", () => {
  let path: string;
  let bytes: Uint8Array;
  let workbook: FileWorkbook;

  beforeAll(async () => {
    await sheet.openTab("Free sheet");
    await sheet.type("A1", "20.5");
    await sheet.type("A2", "red oak");
    await sheet.type("B1", '=BOLE.LOGSCALE(A1,12,"Doyle")');
    await sheet.type("B2", "=SUM(B1,1)");
    await sheet.type("D1", "=BOLE.HEADHEIGHTS(20,1,0.125,3)");
    await sheet.type("C1", "2026-03-04");
    await sheet.openTab("Start here");
    await sheet.select("A1");
    await sheet.page.keyboard.press("Delete");
    await goTo(sheet.page, "Sheets");
    await sheet.page.getByRole("button", { name: "Add" }).first().click();
    path = await savedCopy();
    bytes = readFileSync(path);
    workbook = readWorkbook(bytes);
  }, 120_000);

  it("says what was saved, under a name of its own", async () => {
    expect(path).toMatch(/bole-sample copy\.xlsx$/);
    console.log(
      await said(),
      differences(readFileSync(SAMPLE), bytes),
      Object.keys(partsOf(bytes)),
      workbook.sheets.map(({ name }) => name),
    );
    console.log(partsOf(bytes)["xl/worksheets/sheet18.xml"]?.slice(0, 3000));
  });
});
