import type { IWorkbookData } from "@univerjs/core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let sheet: TryOut;

beforeAll(async () => {
  browser = await openBrowser();
  sheet = await openTryOut(browser, spoil);
});

afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

/** Every calculated value replaced by a wrong one, so that only a page that calculates can show the right ones. */
function spoil(workbook: IWorkbookData): void {
  for (const sheet of Object.values(workbook.sheets))
    for (const row of Object.values(sheet.cellData ?? {}))
      for (const cell of Object.values(row as Record<number, { f?: string | null; v?: unknown; t?: unknown }>))
        if (cell.f) Object.assign(cell, { v: -99999, t: 2 });
}

describe("the workbook in the page", () => {
  it("is calculated by the page itself and shows the terminal's key results", async () => {
    const keyResults = sheet.workbook.formulaCells().filter(({ formula }) => /^=Key_\w+$/.test(formula));
    expect(keyResults.length).toBeGreaterThan(10);
    await sheet.openTab("Summary");
    for (const { address, recalculated } of keyResults.slice(0, 4))
      await sheet.answering(address, Number).toBeCloseTo(recalculated as number, 9);
  });
  it("keeps what is typed into a cell formatted as Text", async () => {
    await sheet.openTab("Start here");
    await sheet.type("B9", "5/4");
    await sheet.select("B9");
    expect(await sheet.page.innerText("#cell .content")).toBe("5/4");
  });
  it("leads from a link to its sheet, where typing goes on", async () => {
    await sheet.select("B18");
    await sheet.page.getByRole("button", { name: "Go to the sheet Log book" }).click();
    await sheet.says("Log book, A1");
    await sheet.page.keyboard.press("ArrowDown");
    await sheet.says("Log book, A2");
  });
  it("is left through the tabs below", async () => {
    await sheet.openTab("Which rule");
  });
});

describe("typing into the grid", () => {
  beforeAll(() => sheet.openTab("Free sheet"));

  it("suggests our functions with their summaries as one types", async () => {
    await sheet.select("H1");
    await sheet.page.keyboard.type("=BOLE.KERFL");
    await sheet.page.getByText("KERFLOSS").first().waitFor();
    expect(await sheet.page.innerText("body")).toContain("Share of the wood that the saw turns into sawdust.");
    await sheet.page.keyboard.press("Escape");
    await sheet.page.keyboard.press("Escape");
  });
  it("answers a formula", async () => {
    await sheet.type("A1", "=BOLE.KERFLOSS(1.125,0.125)");
    await sheet.answering("A1").toBe("0.1");
  });
  it("shows the whole reason where there is no answer", async () => {
    await sheet.type("A2", '=BOLE.KERFLOSS("5/4",-0.1)');
    await sheet.answering("A2").toBe("#VALUE!");
    expect(await sheet.page.innerText("#cell .why")).toMatch(/^kerf: wanted .* got -0\.1$/);
  });
  it("reads a size from text as typed, in quotes and in an array constant", async () => {
    await sheet.type("A3", '=BOLE.KERFLOSS("5/4",0.25)');
    await sheet.answering("A3", Number).toBeCloseTo(1 / 6, 12);
    await sheet.type("A4", '=SUM(BOLE.KERFLOSS({"5/4";"1 1/4"},0.25))');
    await sheet.answering("A4", Number).toBeCloseTo(1 / 3, 12);
  });
  it.each([
    '=BOLE.LOGSCALE(20,12.0,"Doyle")',
    '=BOLE.LOGSCALE(2e1,12,"Doyle")',
    '=IF(.0,"oak",BOLE.LOGSCALE(20,012,"Doyle"))',
  ])("keeps %s as it was typed", async (formula) => {
    await sheet.type("A5", formula);
    await sheet.answering("A5").toBe("192");
    expect(await sheet.page.innerText("#cell .formula")).toBe(formula);
  });
  it("follows a cell that changes, and drops the old reason", async () => {
    await sheet.type("C1", "-1");
    await sheet.type("D1", "=BOLE.KERFLOSS(1,C1)");
    await sheet.answering("D1").toBe("#VALUE!");
    await sheet.type("C1", "0.25");
    await sheet.answering("D1").toBe("0.2");
    expect(await sheet.page.locator("#cell .why").count()).toBe(0);
  });
  it("spills a table and says of its cells where they come from", async () => {
    await sheet.type("F1", "=BOLE.HEADHEIGHTS(20,1,0.125,3)");
    await sheet.select("F2");
    await sheet.says("Part of the answer of F1.");
    expect(await sheet.page.innerText("#cell .answer")).toMatch(/^\d/);
  });
  it("shows a formula that was filled down", async () => {
    for (const row of [1, 2, 3]) await sheet.type(`M${row}`, String(row / 4));
    await sheet.type("N1", "=BOLE.KERFLOSS(.25,M1)");
    await sheet.select("N1:N3");
    await sheet.page.keyboard.press("Control+d");
    await sheet.answering("N3", Number).toBe(0.75);
    expect(await sheet.page.innerText("#cell .formula")).toBe("=BOLE.KERFLOSS(.25,M3)");
  });
  it("leads from an error that is handed on to the cell where it arose", async () => {
    await sheet.type("C3", '=BOLE.KERFLOSS("5/4",-0.1)');
    await sheet.type("C4", "=C3*2");
    await sheet.type("C5", "=SUM(C4,1)");
    await sheet.answering("C5").toBe("#VALUE!");
    expect(await sheet.page.innerText("#cell .why")).toMatch(/^It comes from C3: kerf: wanted .* got -0\.1$/);
  });
  it("leaves a cell alone that stands in the way of a spilling answer", async () => {
    await sheet.type("K2", "'in the way");
    await sheet.type("K1", "=BOLE.HEADHEIGHTS(20,1,0.125,3)");
    await sheet.answering("K1").toBe("#SPILL!");
    expect(await sheet.page.innerText("#cell .why")).toContain("clear those below and to the right");
    await sheet.select("K2");
    await sheet.says("in the way");
    expect(await sheet.page.innerText("#cell")).not.toContain("Part of the answer");
  });
  it("explains an error of the spreadsheet itself", async () => {
    await sheet.type("A6", "=BOLE.KERFLOS(1,1)");
    await sheet.answering("A6").toBe("#NAME?");
    expect(await sheet.page.innerText("#cell")).toContain("Did you mean BOLE.KERFLOSS?");
  });
});

describe("the panel", () => {
  it("is reached with F6 and finds a function by a sawyer's word", async () => {
    await sheet.page.keyboard.press("F6");
    await sheet.page.keyboard.type("sawdust");
    await sheet.page.getByRole("heading", { name: "KERFLOSS", exact: true }).waitFor();
    await sheet.page.keyboard.press("Tab");
    await sheet.page.keyboard.press("Enter");
    await sheet.page.getByRole("form", { name: "Your numbers for KERFLOSS" }).waitFor();
  });
  it("is left with F6, and typing goes on in the sheet", async () => {
    await sheet.select("A8");
    await sheet.page.keyboard.press("F6");
    await sheet.page.keyboard.press("F6");
    await sheet.page.keyboard.type("=1+1");
    await sheet.page.keyboard.press("Enter");
    await sheet.answering("A8").toBe("2");
  });
});

it("asks nothing of any other machine, shows no dialog and complains of nothing", () => {
  const elsewhere = sheet.asked.filter((url) => !url.startsWith(sheet.address) && !/^(data|blob):/.test(url));
  expect(sheet.asked.length).toBeGreaterThan(4);
  expect(elsewhere).toEqual([]);
  expect(sheet.complaints).toEqual([]);
});
