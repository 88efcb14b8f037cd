import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildPage } from "../../../src/hosts/tryout/build";
import { startEngine, type FormulaCell } from "../../../src/hosts/tryout/engine";
import { openWorkbook, SAMPLE } from "../../../src/hosts/tryout/sample";
import { servePage, type PageServer } from "../../../src/hosts/tryout/server";
import { withFreeSheet } from "../../../src/hosts/tryout/free-sheet";
import { addressOf, placeOf } from "../../../src/hosts/tryout/workbook/addresses";
import { openBrowser } from "../../browser";

let server: PageServer;
let browser: Browser;
let page: Page;
const asked: string[] = [];
const complaints: string[] = [];
let keyResults: FormulaCell[];

beforeAll(async () => {
  await buildPage();
  const engine = await startEngine();
  const workbook = await openWorkbook(engine, SAMPLE);
  engine.stop();
  keyResults = workbook.formulaCells().filter(({ formula }) => /^=Key_\w+$/.test(formula));
  server = await servePage(spoiled(withFreeSheet(workbook.snapshot)), 0);
  browser = await openBrowser();
  page = await browser.newPage({ viewport: { width: 1400, height: 850 } });
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => ["error", "warning"].includes(message.type()) && complaints.push(message.text()));
  page.on("pageerror", (fault) => complaints.push(fault.message));
  page.on("dialog", (dialog) => complaints.push(`A dialog: ${dialog.message()}`));
  await page.goto(server.address);
  await panelSays("Start here, A1");
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** Every calculated value replaced by a wrong one, so that only a page that calculates can show the right ones. */
function spoiled<T extends ReturnType<typeof withFreeSheet>>(workbook: T): T {
  const sheets = Object.values(workbook.sheets);
  for (const sheet of sheets)
    for (const row of Object.values(sheet.cellData ?? {}))
      for (const cell of Object.values(row as Record<number, { f?: string | null; v?: unknown; t?: unknown }>))
        if (cell.f) Object.assign(cell, { v: -99999, t: 2 });
  return workbook;
}

const panelText = async (): Promise<string> => page.innerText("#cell");

async function panelSays(text: string): Promise<void> {
  await page.waitForFunction((wanted) => document.querySelector("#cell")?.textContent?.includes(wanted), text);
}

/** Goes to a cell by the box that names it, then types as a person would. */
async function typeInto(address: string, text: string): Promise<void> {
  await select(address);
  await page.keyboard.type(text);
  await suggestionsAreGone();
  await page.keyboard.press("Enter");
  const { row, column } = placeOf(address);
  await panelSays(`, ${addressOf(row + 1, column)}`);
}

/** While a list of suggestions is open Enter chooses from it; it closes a moment after the last letter of a name. */
async function suggestionsAreGone(): Promise<void> {
  await page.waitForTimeout(250);
  await page.waitForFunction(() => !document.querySelector("ul[data-u-comp=sheets-formula-editor]"));
}

async function openTab(name: string): Promise<void> {
  await page.getByText(name, { exact: true }).last().click();
  await panelSays(`${name}, A1`);
}

async function select(address: string): Promise<void> {
  const box = page.locator("#grid input").first();
  await box.click();
  await box.fill(address);
  await box.press("Enter");
  await panelSays(`, ${address}`);
}

async function answerIn(address: string): Promise<string> {
  await select(address);
  await page.waitForSelector("#cell .answer");
  return page.innerText("#cell .answer");
}

/** What a cell answers once the sheet has calculated: asked again until it does, since a busy machine takes its time. */
function answering(address: string, as: (answer: string) => unknown = String) {
  return expect.poll(async () => as(await answerIn(address)));
}

describe("the workbook in the page", () => {
  it("is calculated by the page itself and shows the terminal's key results", async () => {
    expect(keyResults.length).toBeGreaterThan(10);
    await openTab("Summary");
    for (const { address, recalculated } of keyResults.slice(0, 4))
      await answering(address, Number).toBeCloseTo(recalculated as number, 9);
  });
  it("keeps what is typed into a cell formatted as Text", async () => {
    await openTab("Start here");
    await typeInto("B9", "5/4");
    await select("B9");
    expect(await page.innerText("#cell .content")).toBe("5/4");
  });
  it("leads from a link to its sheet, where typing goes on", async () => {
    await select("B18");
    await page.getByRole("button", { name: "Go to the sheet Log book" }).click();
    await panelSays("Log book, A1");
    await page.keyboard.press("ArrowDown");
    await panelSays("Log book, A2");
  });
  it("is left through the tabs below", async () => {
    await page.getByText("Which rule", { exact: true }).last().click();
    await panelSays("Which rule, A1");
  });
});

describe("typing into the grid", () => {
  beforeAll(async () => {
    await page.getByText("Free sheet", { exact: true }).last().click();
    await panelSays("Free sheet, A1");
  });

  it("suggests our functions with their summaries as one types", async () => {
    await select("H1");
    await page.keyboard.type("=BOLE.KERFL");
    await page.getByText("KERFLOSS").first().waitFor();
    expect(await page.innerText("body")).toContain("Share of the wood that the saw turns into sawdust.");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });
  it("answers a formula", async () => {
    await typeInto("A1", "=BOLE.KERFLOSS(1.125,0.125)");
    await answering("A1").toBe("0.1");
  });
  it("shows the whole reason where there is no answer", async () => {
    await typeInto("A2", '=BOLE.KERFLOSS("5/4",-0.1)');
    await answering("A2").toBe("#VALUE!");
    expect(await page.innerText("#cell .why")).toMatch(/^kerf: wanted .* got -0\.1$/);
  });
  it("reads a size from text as typed, in quotes and in an array constant", async () => {
    await typeInto("A3", '=BOLE.KERFLOSS("5/4",0.25)');
    await answering("A3", Number).toBeCloseTo(1 / 6, 12);
    await typeInto("A4", '=SUM(BOLE.KERFLOSS({"5/4";"1 1/4"},0.25))');
    await answering("A4", Number).toBeCloseTo(1 / 3, 12);
  });
  it.each([
    '=BOLE.LOGSCALE(20,12.0,"Doyle")',
    '=BOLE.LOGSCALE(2e1,12,"Doyle")',
    '=IF(.0,"oak",BOLE.LOGSCALE(20,012,"Doyle"))',
  ])("keeps %s as it was typed", async (formula) => {
    await typeInto("A5", formula);
    await answering("A5").toBe("192");
    expect(await page.innerText("#cell .formula")).toBe(formula);
  });
  it("follows a cell that changes, and drops the old reason", async () => {
    await typeInto("C1", "-1");
    await typeInto("D1", "=BOLE.KERFLOSS(1,C1)");
    await answering("D1").toBe("#VALUE!");
    await typeInto("C1", "0.25");
    await answering("D1").toBe("0.2");
    expect(await page.locator("#cell .why").count()).toBe(0);
  });
  it("spills a table and says of its cells where they come from", async () => {
    await typeInto("F1", "=BOLE.HEADHEIGHTS(20,1,0.125,3)");
    await select("F2");
    await panelSays("Part of the answer of F1.");
    expect(await page.innerText("#cell .answer")).toMatch(/^\d/);
  });
  it("shows a formula that was filled down", async () => {
    for (const row of [1, 2, 3]) await typeInto(`M${row}`, String(row / 4));
    await typeInto("N1", "=BOLE.KERFLOSS(.25,M1)");
    const box = page.locator("#grid input").first();
    await box.click();
    await box.fill("N1:N3");
    await box.press("Enter");
    await page.keyboard.press("Control+d");
    await answering("N3", Number).toBe(0.75);
    expect(await page.innerText("#cell .formula")).toBe("=BOLE.KERFLOSS(.25,M3)");
  });
  it("leads from an error that is handed on to the cell where it arose", async () => {
    await typeInto("C3", '=BOLE.KERFLOSS("5/4",-0.1)');
    await typeInto("C4", "=C3*2");
    await typeInto("C5", "=SUM(C4,1)");
    await answering("C5").toBe("#VALUE!");
    expect(await page.innerText("#cell .why")).toMatch(/^It comes from C3: kerf: wanted .* got -0\.1$/);
  });
  it("leaves a cell alone that stands in the way of a spilling answer", async () => {
    await typeInto("K2", "'in the way");
    await typeInto("K1", "=BOLE.HEADHEIGHTS(20,1,0.125,3)");
    await answering("K1").toBe("#SPILL!");
    expect(await page.innerText("#cell .why")).toContain("clear those below and to the right");
    await select("K2");
    await panelSays("in the way");
    expect(await panelText()).not.toContain("Part of the answer");
  });
  it("explains an error of the spreadsheet itself", async () => {
    await typeInto("A6", "=BOLE.KERFLOS(1,1)");
    await answering("A6").toBe("#NAME?");
    expect(await panelText()).toContain("Did you mean BOLE.KERFLOSS?");
  });
});

describe("the panel", () => {
  it("is reached with F6 and finds a function by a sawyer's word", async () => {
    await page.keyboard.press("F6");
    await page.keyboard.type("sawdust");
    await page.getByRole("heading", { name: "KERFLOSS", exact: true }).waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.getByRole("form", { name: "Your numbers for KERFLOSS" }).waitFor();
  });
  it("is left with F6, and typing goes on in the sheet", async () => {
    await select("A8");
    await page.keyboard.press("F6");
    await page.keyboard.press("F6");
    await page.keyboard.type("=1+1");
    await page.keyboard.press("Enter");
    await answering("A8").toBe("2");
  });
});

it("asks nothing of any other machine, shows no dialog and complains of nothing", () => {
  const elsewhere = asked.filter((url) => !url.startsWith(server.address) && !/^(data|blob):/.test(url));
  expect(asked.length).toBeGreaterThan(4);
  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
});
