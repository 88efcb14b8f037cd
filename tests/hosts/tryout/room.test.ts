import type { IWorkbookData } from "@univerjs/core";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { axeComplaints, goTo, widthNeeded } from "../excel/pane-page";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let sheet: TryOut;

beforeAll(async () => {
  browser = await openBrowser();
  sheet = await openTryOut(browser, keepFirstSheet);
});
afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

/** The page is opened eight times; what matters here is the room in it, not how much it calculates. */
function keepFirstSheet(workbook: IWorkbookData): void {
  const first = workbook.sheetOrder[0]!;
  workbook.sheetOrder = [first];
  workbook.sheets = { [first]: workbook.sheets[first]! };
}

/** A cant has two end views, the widest drawing there is. */
const LOG = { "Diameter of the small end": "20", Length: "8-6", "Thicknesses wanted": "5/4, 8/4", Kerf: "1/8" };

/** Whether all of something lies within the window. */
async function isInWindow(page: Page, part: Locator): Promise<boolean> {
  const box = (await part.boundingBox())!;
  const window = page.viewportSize()!;
  return box.x >= 0 && box.y >= 0 && box.x + box.width <= window.width && box.y + box.height <= window.height;
}

async function sidewaysIn(page: Page): Promise<number> {
  const panel = await page.locator("#panel").evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
  return panel + (await widthNeeded(page)) - page.viewportSize()!.width;
}

describe.each([
  [1440, 900, "light"],
  [1440, 900, "dark"],
  [1024, 700, "light"],
  [1024, 700, "dark"],
  [390, 800, "light"],
  [390, 800, "dark"],
] as const)("a window of %s by %s, %s", (width, height, colorScheme) => {
  let page: Page;

  beforeAll(async () => {
    page = await browser.newPage({ viewport: { width, height }, colorScheme });
    await page.goto(sheet.address);
    await page.waitForFunction(() => document.querySelector("#cell")?.textContent?.includes("Start here, A1"));
    await goTo(page, "Cut plan");
  });
  afterAll(() => page.close());

  it("keeps the button for the plan in sight, and what is typed off its place", async () => {
    const button = page.getByRole("button", { name: "Show the plan" });
    await page.getByLabel("Diameter of the small end").focus();
    expect(await isInWindow(page, button)).toBe(true);
    await page.getByLabel("Pattern").focus();
    const field = (await page.getByLabel("Pattern").boundingBox())!;
    expect(field.y + field.height).toBeLessThanOrEqual((await button.boundingBox())!.y);
  });

  it("shows a plan by keyboard alone, nothing wider than the window", async () => {
    await page.getByLabel("Diameter of the small end").focus();
    for (const value of Object.values(LOG)) {
      await page.keyboard.type(value);
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.type("cant");
    await page.getByLabel("Cant widths").focus();
    await page.keyboard.type("6, 8");
    await page.keyboard.press("Enter");
    await page.locator(".plan svg").waitFor();
    expect(await page.getByLabel("Pattern").isVisible()).toBe(false);
    expect(await isInWindow(page, page.locator(".plan h3"))).toBe(true);
    expect(await sidewaysIn(page)).toBe(0);
    const table = page.getByRole("group", { name: "Settings of the saw head" });
    expect(await table.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBe(0);
    expect(await axeComplaints(page, "#panel")).toEqual([]);
  });

  it("fits both views of a cant into the window when they are seen large", async () => {
    await page.locator(".plan").getByRole("button", { name: "See it large" }).press("Enter");
    const dialog = page.getByRole("dialog");
    expect(await isInWindow(page, dialog.getByRole("img"))).toBe(true);
    expect(await isInWindow(page, dialog)).toBe(true);
    const frame = dialog.getByRole("group");
    expect(await frame.evaluate((of) => [of.scrollWidth - of.clientWidth, of.scrollHeight - of.clientHeight])).toEqual([
      0, 0,
    ]);
    expect(await axeComplaints(page, "dialog")).toEqual([]);
  });

  it("prints the end view that is seen large alone, on one page", async () => {
    const pages = (await page.pdf({ format: "A4", printBackground: true })).toString("latin1");
    expect(pages.match(/\/Type \/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: "print", colorScheme });
    expect(await page.locator("#panel").isVisible()).toBe(false);
    expect(await page.locator("#grid").isVisible()).toBe(false);
    expect(await page.getByRole("dialog").getByRole("img").isVisible()).toBe(true);
    expect(await page.getByRole("dialog").getByRole("button").count()).toBe(0);
    await page.emulateMedia({ media: "screen", colorScheme });
    await page.keyboard.press("Escape");
  });

  it("copies the end view as a picture, and says so", async () => {
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByRole("button", { name: "Copy the picture" }).press("Enter");
    await page.getByText("The end view is copied").waitFor();
    const kinds = await page.evaluate(async () => (await navigator.clipboard.read()).flatMap(({ types }) => types));
    expect(kinds).toEqual(["image/png"]);
  });
});

it("follows the machine into the dark and back while it is open", async () => {
  const page = await browser.newPage({ viewport: { width: 1024, height: 700 }, colorScheme: "light" });
  await page.goto(sheet.address);
  await page.waitForFunction(() => document.querySelector("#cell")?.textContent?.includes("Start here, A1"));
  const isDark = () => page.evaluate(() => document.documentElement.classList.contains("univer-dark"));
  expect(await isDark()).toBe(false);
  await page.emulateMedia({ colorScheme: "dark" });
  await expect.poll(isDark).toBe(true);
  await page.emulateMedia({ colorScheme: "light" });
  await expect.poll(isDark).toBe(false);
  await page.close();
});

it("complains of nothing", () => expect(sheet.complaints).toEqual([]));
