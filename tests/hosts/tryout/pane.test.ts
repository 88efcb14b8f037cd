import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { READY_SHEETS } from "../../../src/sheets/ready";
import { openBrowser } from "../../browser";
import { axeComplaints, goTo, said } from "../excel/pane-page";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let sheet: TryOut;
let page: Page;

beforeAll(async () => {
  browser = await openBrowser();
  sheet = await openTryOut(browser);
  page = sheet.page;
  await sheet.openTab("Free sheet");
});

afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

const answer = () => page.innerText("#cell .answer");

describe("the pane beside the live sheet", () => {
  it("takes arguments from the chosen cells and puts the formula into the sheet", async () => {
    await sheet.type("A1", "1.125");
    await sheet.type("A2", "2");
    await page.getByLabel("What do you want to know?").fill("kerfloss");
    await page.locator("details.entry summary").first().click();
    const form = page.getByRole("form", { name: "Your numbers for KERFLOSS" });
    await sheet.select("A1:A2");
    await form.getByRole("button", { name: "Use the chosen cells for thickness" }).click();
    await expect.poll(() => said(page)).toBe("thickness comes from 'Free sheet'!A1:A2");
    await form.getByLabel("kerf", { exact: true }).fill("1/8");
    await form.getByRole("button", { name: "Show the answer" }).click();
    await expect.poll(() => form.locator("output").textContent()).toContain("0.0588235");
    await sheet.select("C1");
    await form.getByRole("button", { name: "Put into the chosen cell" }).click();
    await expect.poll(() => said(page)).toBe('Free sheet!C1 now holds =BOLE.KERFLOSS(A1:A2, "1/8")');
    await expect.poll(answer).toBe("0.1");
    await form.getByRole("button", { name: "Put into the chosen cell" }).click();
    await expect.poll(() => said(page)).toBe("Not done. Free sheet!C1 already holds 0.1. Choose an empty cell.");
  });

  it("names the chosen cells with their sheet", async () => {
    await sheet.select("A2");
    const form = page.getByRole("form", { name: "Your numbers for KERFLOSS" });
    await form.getByRole("button", { name: "Use the chosen cells for thickness" }).click();
    await expect.poll(() => said(page)).toBe("thickness comes from 'Free sheet'!A2");
  });

  it("reads cells from either corner, and refuses more than anybody means", async () => {
    const form = page.getByRole("form", { name: "Your numbers for KERFLOSS" });
    const show = async (thickness: string) => {
      await form.getByLabel("thickness", { exact: true }).fill(thickness);
      await form.getByRole("button", { name: "Show the answer" }).click();
    };
    await show("A2:A1");
    await expect.poll(() => form.locator("output").textContent()).toContain("0.0588235");
    await show("A1:XFD1048576");
    await expect.poll(() => said(page)).toMatch(/^Not done\. A1:XFD1048576 is more than 100000 cells/);
    await show("Nowhere!A1");
    await expect.poll(() => said(page)).toBe("Not done. There is no sheet Nowhere.");
    expect(await form.locator("output").textContent()).toBe("");
  });

  it("shows the end of the log beside the sheet when a cell plans its cuts", async () => {
    await sheet.type("F1", '=BOLE.CUTPLAN(20,"8-6",{"5/4";"8/4"},0.125)');
    await sheet.select("F1");
    await page
      .locator("#cell")
      .getByRole("img", { name: /20 in log, 8 ft 6 in long/ })
      .waitFor();
    await sheet.select("G3");
    const drawing = page.locator("#cell").getByRole("img", { name: /20 in log/ });
    const panel = (await page.locator("#cell").boundingBox())!;
    expect((await drawing.boundingBox())!.width).toBeLessThan(panel.width);
    const large = page.locator("#cell").getByRole("button", { name: "See it large" });
    await large.click();
    const shown = page.getByRole("dialog").getByRole("img", { name: /20 in log/ });
    await page.getByRole("button", { name: "Full size" }).click();
    expect((await shown.boundingBox())!.width).toBeCloseTo(Number(await shown.getAttribute("width")), 0);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.locator("dialog").count()).toBe(0);
    expect(await large.evaluate((button) => button === document.activeElement)).toBe(true);
    await sheet.select("C1");
    expect(await page.locator("#cell svg").count()).toBe(0);
  });

  it("plans a log and puts its formula into the sheet, where no picture can be placed", async () => {
    await goTo(page, "Cut plan");
    await page.getByLabel("Diameter of the small end").fill("16");
    await page.getByLabel("Length", { exact: true }).fill("8");
    await page.getByLabel("Thicknesses wanted").fill("4/4");
    await page.getByLabel("Kerf", { exact: true }).fill("1/8");
    await page.getByRole("button", { name: "Show the plan" }).click();
    await page.locator(".plan svg").waitFor();
    expect(await page.getByRole("button", { name: "Place the picture on the sheet" }).count()).toBe(0);
    await sheet.select("F40");
    await page.getByRole("button", { name: "Put the formula into the chosen cell" }).click();
    await expect.poll(() => said(page)).toBe('Free sheet!F40 now holds =BOLE.CUTPLAN(16, 8, "4/4", "1/8")');
    await expect.poll(answer).toBe("pass");
  });

  it("is sound by axe in every part", async () => {
    for (const part of ["Formulas", "Sheets", "Cut plan"] as const) {
      await goTo(page, part);
      expect(await axeComplaints(page, "#panel"), part).toEqual([]);
    }
  });
});

describe("a ready sheet in the page", () => {
  it.each(READY_SHEETS)("$title is added and calculates", async ({ title, cautions }) => {
    await goTo(page, "Sheets");
    const before = await page.locator("#cell h2").textContent();
    await page.getByRole("button", { name: `Add the sheet ${title}` }).click();
    await expect.poll(() => said(page)).toMatch(/^Added the sheet /);
    const name = /^Added the sheet (.*?)\. Its/.exec((await said(page))!)![1]!;
    expect([title, `${title} 2`]).toContain(name);
    await sheet.says(`${name}, `);
    expect(await page.locator("#cell h2").textContent()).not.toBe(before);
    // Heading, lead and cautions stand above the cell that tells whether Bole answers.
    await sheet.select(`A${3 + cautions.length}`);
    await expect.poll(answer).toMatch(/^Bole \d/);
  });

  it("is added once by a double click", async () => {
    await page.getByRole("button", { name: "Add the sheet Price list" }).dblclick();
    await sheet.says("Price list 2, ");
    await page.waitForTimeout(300);
    const tabs = () => page.getByText("Price list 3", { exact: true }).count();
    expect(await tabs()).toBe(0);
  });

  it("follows what is typed over its examples", async () => {
    await page.getByRole("button", { name: "Add the sheet Sawing bill" }).click();
    await sheet.says("Sawing bill 2, ");
    await sheet.select("B13");
    await expect.poll(answer).toBe("98.88125");
    await sheet.type("B7", "1");
    await sheet.select("B13");
    await expect.poll(answer).not.toBe("98.88125");
  });
});

it("complains of nothing", () => expect(sheet.complaints).toEqual([]));
