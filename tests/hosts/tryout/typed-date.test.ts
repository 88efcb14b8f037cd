import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let sheet: TryOut;
beforeAll(async () => {
  browser = await openBrowser();
  sheet = await openTryOut(browser);
  await sheet.openTab("Free sheet");
});
afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

describe("a size that the sheet turns into a day as it is typed", () => {
  it.each([
    ["A1", "5/4"],
    ["A2", "8-6"],
  ])("is told on its cell: %s, %s", async (address, size) => {
    await sheet.type(address, size);
    await sheet.says(`Just typed into ${address}: This cell holds a date.`);
    await sheet.select(address);
    await expect.poll(() => sheet.page.innerText("#cell")).toContain("format the cell as Text, then type it again");
  });

  it("is not said of a day that was typed as one", async () => {
    await sheet.type("A3", "2026-03-04");
    await sheet.select("A3");
    await sheet.says("2026");
    expect(await sheet.page.innerText("#cell")).not.toContain("format the cell as Text");
  });
});

describe("the page by night", () => {
  it("follows what the person has chosen for the whole machine, sheet and panel alike", async () => {
    const page = await browser.newPage({ colorScheme: "dark" });
    await page.goto(sheet.address);
    await page.waitForFunction(() => document.querySelector("#cell")?.textContent?.includes("Start here, A1"));
    const lightness = (selector: string) =>
      page.evaluate((of) => {
        const [red = 0, green = 0, blue = 0] = (
          getComputedStyle(document.querySelector(of)!).backgroundColor.match(/\d+/g) ?? []
        ).map(Number);
        return red + green + blue;
      }, selector);
    expect(await lightness("body")).toBeLessThan(200);
    expect(await page.evaluate(() => document.documentElement.classList.contains("univer-dark"))).toBe(true);
    await page.close();
  });
});
