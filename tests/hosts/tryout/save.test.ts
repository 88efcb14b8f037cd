import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../src/engine/engine";
import { readWorkbook, type FileCell, type FileWorkbook } from "../../../src/engine/workbook/read";
import { addressOf } from "../../../src/formula/addresses";
import { SAMPLE } from "../../../src/hosts/terminal/sample";
import { recalculated } from "../../../src/hosts/terminal/file/recalc";
import { openPackage } from "../../../src/xlsx/package";
import { readParts } from "../../../src/xlsx/parts";
import { openBrowser } from "../../browser";
import { axeComplaints, goTo } from "../excel/pane-page";
import { differences, partsOf } from "../terminal/file/tiny";
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

/** The part that a sheet becomes which is the n-th beside those of the sample. */
function addedPart(n: number): string {
  const { sheets } = readParts(openPackage(readFileSync(SAMPLE), new Date(0)));
  return `xl/worksheets/sheet${sheets.length + n}.xml`;
}

const said = () => sheet.page.locator("#file-said").textContent();
const button = (name: string) => sheet.page.getByRole("button", { name, exact: true });

async function savedCopy(): Promise<string> {
  const downloading = sheet.page.waitForEvent("download");
  await button("Save a copy").click();
  const download = await downloading;
  const path = join(mkdtempSync(join(tmpdir(), "bole-")), download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

/** Whether the page would warn of being closed. */
function warnsOfClosing(): Promise<boolean> {
  return sheet.page.evaluate(() => !window.dispatchEvent(new Event("beforeunload", { cancelable: true })));
}

function cellIn({ sheets }: FileWorkbook, name: string, address: string): FileCell | undefined {
  const { cells } = sheets.find((one) => one.name === name)!;
  return cells.find(({ row, column }) => addressOf(row, column) === address);
}

/** Goes to a sheet by its tab, to the cell that was chosen there last. */
async function goToTab(name: string): Promise<void> {
  await sheet.page.getByText(name, { exact: true }).last().click();
  await sheet.says(`${name}, `);
}

/** Goes to a sheet by the link that the first sheet has to it. */
async function goToSheet(name: string): Promise<void> {
  const links = readWorkbook(readFileSync(SAMPLE)).sheets[0]!.cells.filter(({ leadsTo }) => leadsTo === name);
  await goToTab("Start here");
  await sheet.select(addressOf(links[0]!.row, links[0]!.column));
  await button(`Go to the sheet ${name}`).click();
  await sheet.says(`${name}, A1`);
}

describe("the sample as it was opened", () => {
  it("is named, has nothing unsaved, and saves as the same file byte for byte", async () => {
    expect(await sheet.page.locator("#file-name").textContent()).toBe("bole-sample.xlsx");
    expect(await warnsOfClosing()).toBe(false);
    const copy = readFileSync(await savedCopy());
    expect(differences(readFileSync(SAMPLE), copy)).toEqual({ changed: [], added: [], removed: [] });
    expect(await said()).toBe("Saved a copy as bole-sample copy.xlsx. 0 cells of the workbook changed.");
  });
});

describe("saving what was typed into the sample", () => {
  let path: string;
  let bytes: Uint8Array;
  let workbook: FileWorkbook;

  beforeAll(async () => {
    await goToTab("Free sheet");
    await sheet.type("A1", "20.5");
    await sheet.type("A2", "red oak");
    await sheet.type("B1", '=BOLE.LOGSCALE(A1,12,"Doyle")');
    await sheet.type("B2", "=SUM(B1,1)");
    await sheet.type("C1", "2026-03-04");
    await sheet.type("D1", "=BOLE.HEADHEIGHTS(20,1,0.125,3)");
    await goToSheet("Band speeds");
    await sheet.type("A8", "31");
    await sheet.select("B8");
    await sheet.says(String(MOTOR_AT_31_HZ));
    await goToTab("Start here");
    await sheet.select("A1");
    await sheet.page.keyboard.press("Delete");
    await sheet.says("An empty cell");
    await goTo(sheet.page, "Sheets");
    await sheet.page.getByRole("button", { name: /^Add/ }).first().click();
    await sheet.says("Log book 2, A1");
    path = await savedCopy();
    bytes = readFileSync(path);
    workbook = readWorkbook(bytes);
  });

  /** 31 Hz for 30 Hz: the sample's motor, 865 turns a minute at 30 and 1015 at 35, makes 30 more for each. */
  const MOTOR_AT_31_HZ = 895;

  it("says what was saved, and warns no more of closing the page", async () => {
    expect(path).toMatch(/bole-sample copy\.xlsx$/);
    expect(await said()).toMatch(
      /^Saved a copy as bole-sample copy\.xlsx\. \d+ cells of the workbook changed\. 2 sheets added: Free sheet, Log book 2\.$/,
    );
    expect(await warnsOfClosing()).toBe(false);
  });

  it("holds what was typed, and nothing where a cell was emptied", () => {
    expect(cellIn(workbook, "Band speeds", "A8")?.value).toBe(31);
    expect(cellIn(workbook, "Band speeds", "B8")?.value).toBe(MOTOR_AT_31_HZ);
    expect(cellIn(workbook, "Start here", "A1")).toBeUndefined();
    expect(cellIn(workbook, "Free sheet", "A1")?.value).toBe(20.5);
    expect(cellIn(workbook, "Free sheet", "A2")?.value).toBe("red oak");
    expect(cellIn(workbook, "Log book 2", "A1")?.value).toMatch(/^Log book: /);
  });

  it("holds formulas as Excel stores them, with their answers", () => {
    const scaled = cellIn(workbook, "Free sheet", "B1")!;
    // ((20.5 - 4) / 4)^2 * 12
    expect(scaled).toMatchObject({ stored: '_xldudf_BOLE_LOGSCALE(A1,12,"Doyle")', value: 204.1875 });
    expect(cellIn(workbook, "Free sheet", "B2")).toMatchObject({ stored: "SUM(B1,1)", value: 205.1875 });
    expect(cellIn(workbook, "Free sheet", "D1")!.spill).toMatchObject({ top: 0, left: 3 });
    const mark = /<c r="B1"[^>]* cm="1"><f t="array" ref="B1">/;
    expect(partsOf(bytes)[addedPart(1)]).toMatch(mark);
  });

  it("shows a typed day as a day", () => {
    const { cells } = workbook.sheets.find(({ name }) => name === "Free sheet")!.looks!;
    const look = cells.find(({ row, column }) => row === 0 && column === 2)!.look;
    expect(look.numberFormat).toMatch(/y/i);
    expect(cellIn(workbook, "Free sheet", "C1")?.value).toBe(46_085);
  });

  it("keeps every other part byte for byte, charts and lists to choose from among them", () => {
    const { changed, added, removed } = differences(readFileSync(SAMPLE), bytes);
    const { sheets } = readParts(openPackage(bytes, new Date(0)));
    const typedOn = sheets.filter(({ name }) => ["Start here", "Band speeds"].includes(name)).map(({ part }) => part);
    expect(changed).toEqual(
      ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/workbook.xml", ...typedOn].sort(),
    );
    expect(added).toEqual([addedPart(1), addedPart(2)]);
    expect(removed).toEqual([]);
    expect(Object.keys(partsOf(bytes)).filter((part) => part.startsWith("xl/charts/")).length).toBeGreaterThan(2);
  });

  it("is recalculated to the same values", async () => {
    const { summary } = await recalculated(bytes, engine, new Date("2026-03-01T00:00:00Z"));
    expect(summary).toContain("; 0 cells changed");
  });
});

describe("opening a workbook", () => {
  it("says why a broken file cannot be opened, in the terminal's words, and stays", async () => {
    const broken = { name: "broken.xlsx", mimeType: "", buffer: Buffer.from("PK, and then nonsense") };
    await sheet.page.locator("#file-buttons input").setInputFiles(broken);
    await expect
      .poll(said)
      .toMatch(/^The workbook broken\.xlsx cannot be opened \(it is damaged.*\)\. Nothing was changed\.$/);
    expect(await sheet.page.locator("#file-name").textContent()).toBe("bole-sample.xlsx");
  });

  it("asks in the page first where something typed is not saved", async () => {
    await goToTab("Free sheet");
    await sheet.type("A5", "unsaved");
    expect(await warnsOfClosing()).toBe(true);
    await button("Open a workbook").click();
    await sheet.page.getByText("What you typed is not saved.").waitFor();
    expect(await axeComplaints(sheet.page, "#panel")).toEqual([]);
    await button("Stay here").click();
    expect(await button("Open a workbook").evaluate((one) => one === document.activeElement)).toBe(true);
  });

  it("shows in its place what was typed and saved before", async () => {
    const path = await savedCopy();
    const choosing = sheet.page.waitForEvent("filechooser");
    await button("Open a workbook").click();
    await (await choosing).setFiles(path);
    await sheet.page.waitForURL(/workbook=/);
    await sheet.says("Start here, A1");
    await expect.poll(() => sheet.page.locator("#file-name").textContent()).toBe("bole-sample copy.xlsx");
    await goToTab("Free sheet");
    await sheet.answering("B1", Number).toBe(204.1875);
    await sheet.select("A5");
    await sheet.says("unsaved");
    expect(await warnsOfClosing()).toBe(false);
  });
});

it("asks nothing of any other machine, shows no dialog and complains of nothing", () => {
  const elsewhere = sheet.asked.filter((url) => !url.startsWith(sheet.address) && !/^(data|blob):/.test(url));
  expect(sheet.asked.length).toBeGreaterThan(4);
  expect(elsewhere).toEqual([]);
  // A refused file is an answer that the browser itself notes down.
  expect(sheet.complaints.filter((one) => !one.includes("status of 422"))).toEqual([]);
});
