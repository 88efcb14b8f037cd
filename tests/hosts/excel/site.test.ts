import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { emptyPage, type Visit } from "./browser-page";
import { builtFolder, TEST_ADDRESS } from "./build";
import { axeComplaints, widthNeeded } from "./pane-page";

let folder: string;
let browser: Browser;
let visit: Visit;
let page: Page;
beforeAll(async () => {
  folder = await builtFolder();
  browser = await openBrowser();
  visit = await emptyPage(browser, folder);
  page = visit.page;
  await page.goto(`${TEST_ADDRESS}/index.html`);
  await page.waitForSelector("#answer section");
});
afterAll(() => browser?.close());

describe("the page at the add-in's address", () => {
  it("answers a formula that is typed, by the add-in's own functions, and says why one has no answer", async () => {
    const answer = () => page.innerText("#answer");
    expect(await answer()).toContain("262.5");
    await page.getByLabel("Try one here").fill('BOLE.LOGSCALE(20, 12, "Doyle")');
    await expect.poll(answer).toContain("192");
    await page.getByLabel("Try one here").fill('=BOLE.LOGSCALE("thick", 12)');
    await expect.poll(answer).toMatch(/#VALUE!.*diameter/s);
    await page.getByLabel("Try one here").fill("=SUM(1, 2)");
    await expect.poll(answer).toContain("begins with =BOLE.");
    await page.getByLabel("Try one here").fill("=BOLE.LOGSCALE(");
    await expect.poll(answer).not.toMatch(/NaN|undefined/);
    for (const button of await page.locator("#examples button").all()) {
      await button.click();
      await expect.poll(answer).toMatch(/Answer|#N\/A/);
    }
  });

  it("shows pieces of the sample as they stand in the workbook beside it", async () => {
    const [logs, passes] = await page.locator(".sheet table").all();
    expect(await page.getByRole("group", { name: "All data invented" }).count()).toBe(2);
    expect(await logs!.locator("tbody tr").count()).toBe(6);
    expect(await logs!.locator("tbody tr").first().innerText()).toMatch(/^L01\tblack walnut\t10'6"\t25\.25\t286\t/);
    expect(await passes!.locator("tbody tr").first().innerText()).toMatch(/^31-7\/16\t☐\t/);
  });

  it("leads only to files that stand beside it", () => {
    const html = readFileSync(join(folder, "index.html"), "utf8");
    const files = [...html.matchAll(/(?:href|src)="([^"]+)"/g)].map(([, file]) => file!);
    expect(files.length).toBeGreaterThan(10);
    for (const file of files) expect(existsSync(join(folder, file)), file).toBe(true);
  });

  it.each([1440, 1024, 390])("fits a window %i wide by day and by night, and axe finds nothing", async (width) => {
    await page.setViewportSize({ width, height: 800 });
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await widthNeeded(page)).toBeLessThanOrEqual(width);
      expect(await axeComplaints(page, "body")).toEqual([]);
    }
  });

  it("breaks none of its own rules and asks no other machine", () => {
    expect(visit.complaints).toEqual([]);
    expect(visit.strayRequests).toEqual([]);
  });
});
