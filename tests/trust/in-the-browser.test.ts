import { relative } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../browser";
import { emptyPage, OFFICE, visit, type Visit } from "../hosts/excel/browser-page";
import { builtFolder, filesUnder, TEST_ADDRESS } from "../hosts/excel/build";
import { goTo } from "../hosts/excel/pane-page";
import { plainCells, standIn } from "../hosts/excel/stand-in";
import { openTryOut, type TryOut } from "../hosts/tryout/open-page";
import { staticHost } from "./static-host";

/** What a page would do if it ever took a cell's text for markup. */
const MARKUP = `<img src=x onerror="window.spoiled=1"><script>window.spoiled=1</script><b class=spoiled>`;

let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = await builtFolder();
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Whether a text of ours has become a part of the page. */
function becameMarkup(page: Page): Promise<unknown[]> {
  return page.evaluate(() => [
    ...[...document.querySelectorAll("img[src=x], b.spoiled, [onerror]")].map((element) => element.outerHTML),
    ...("spoiled" in window ? ["a script ran"] : []),
  ]);
}

/** Ways in which a script could send what it knows to somebody. */
async function triesToSend(page: Page, address: string): Promise<string[]> {
  return page.evaluate(async (url) => {
    const got: string[] = [];
    const note = (way: string) => () => void got.push(way);
    await fetch(url, { mode: "no-cors" }).then(note("fetch"), () => undefined);
    await new Promise<void>((done) => {
      const image = new Image();
      image.onload = () => (got.push("picture"), done());
      image.onerror = () => done();
      image.src = `${url}/beacon.png`;
    });
    const form = document.createElement("form");
    Object.assign(form, { action: url, method: "post", target: "_blank" });
    document.body.append(form);
    form.submit();
    await new Promise((done) => setTimeout(done, 200));
    form.remove();
    return got;
  }, address);
}

const ELSEWHERE = "https://elsewhere.example";

describe("the pane", () => {
  let visited: Visit;
  let page: Page;
  beforeAll(async () => {
    visited = await visit(browser, folder, "taskpane.html");
    page = visited.page;
    await standIn(page, {
      active: "Logs",
      chosen: "A1",
      sheets: { Logs: { cells: plainCells({ A1: MARKUP, A2: 20 }) } },
    });
  });

  const entryOf = (name: string) =>
    page.locator("details.entry").filter({ has: page.getByRole("heading", { name, exact: true }) });

  it("shows markup typed into its fields as the text that it is", async () => {
    await page.getByLabel("What do you want to know?").fill(MARKUP);
    expect(await page.locator("#found").textContent()).toMatch(/none has all of these words$/);
    await page.getByLabel("What do you want to know?").fill("LOGSCALE");
    const entry = entryOf("LOGSCALE");
    await entry.locator("summary").click();
    const inputs = entry.locator("form input");
    await inputs.nth(0).fill(MARKUP);
    await inputs.nth(1).fill("12");
    await entry.getByRole("button", { name: "Show the answer" }).click();
    await expect.poll(() => entry.locator("output.answer").textContent()).toContain('<img src=x onerror="');
    expect(await becameMarkup(page)).toEqual([]);
  });

  it("shows markup in a cell of the workbook as the text that it is", async () => {
    const entry = entryOf("LOGSCALE");
    await entry.locator("form input").nth(0).fill("Logs!A1");
    await entry.getByRole("button", { name: "Show the answer" }).click();
    await expect.poll(() => entry.locator("output.answer").textContent()).toMatch(/A1.*#VALUE!.*<img src=x/s);
    expect(await becameMarkup(page)).toEqual([]);
  });

  it("plans no cut with markup in any field, and shows none", async () => {
    await goTo(page, "Cut plan");
    const part = page.getByRole("region", { name: "Cut plan" });
    const sound = { "Diameter of the small end": "20", Length: "8-6", "Thicknesses wanted": "5/4, 8/4", Kerf: "1/8" };
    const inputs = part.locator("input");
    const count = await inputs.count();
    expect(count).toBeGreaterThan(4);
    for (let at = 0; at < count; at++) {
      for (const [label, value] of Object.entries(sound)) await page.getByLabel(label, { exact: true }).fill(value);
      await inputs.nth(at).evaluate((input, text) => {
        (input as HTMLInputElement).value = text;
      }, MARKUP);
      await page.getByRole("button", { name: "Show the plan" }).click();
      await inputs.nth(at).evaluate((input) => {
        (input as HTMLInputElement).value = "";
      });
    }
    expect(await becameMarkup(page)).toEqual([]);
  });

  it("asks nobody but Microsoft for its script, whatever is opened in it", async () => {
    for (const part of ["Formulas", "Sheets", "Cut plan"] as const) await goTo(page, part);
    await page.evaluate(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
    await expect.poll(() => page.locator("details.entry form").count()).toBeGreaterThan(0);
    expect(visited.strayRequests).toEqual([]);
  });

  it("could not send a number anywhere if it wanted to", async () => {
    expect(await triesToSend(page, ELSEWHERE)).toEqual([]);
    expect(visited.strayRequests).toEqual([]);
    expect(visited.complaints.filter((text) => text.includes(ELSEWHERE)).length).toBeGreaterThanOrEqual(2);
  });
});

it("the help and reference pages ask nobody for anything", async () => {
  const { page, strayRequests, complaints } = await emptyPage(browser, folder);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  const pages = filesUnder(folder)
    .map((path) => relative(folder, path).replaceAll("\\", "/"))
    .filter((name) => name.endsWith(".html") && name !== "taskpane.html");
  expect(pages.length).toBeGreaterThan(100);
  for (const name of pages) await page.goto(`${TEST_ADDRESS}/${name}`);
  expect(asked.length).toBeGreaterThan(pages.length);
  expect(asked.filter((url) => !url.startsWith(`${TEST_ADDRESS}/`))).toEqual([]);
  expect([...strayRequests, ...complaints]).toEqual([]);
  expect(asked.filter((url) => url.startsWith(OFFICE))).toEqual([]);
});

describe("the try-out sheet", () => {
  let sheet: TryOut;

  beforeAll(async () => {
    sheet = await openTryOut(browser, (workbook) => {
      const free = workbook.sheets["free"]!;
      workbook.sheets["free"] = { ...free, cellData: { 0: { 1: { v: MARKUP, t: 1 } } } };
    });
    await sheet.openTab("Free sheet");
  });
  afterAll(() => sheet.close());

  async function type(address: string, text: string): Promise<void> {
    await sheet.type(address, text);
    await sheet.select("C1");
    await sheet.select(address);
  }

  it("shows markup typed into a cell as the text that it is", async () => {
    await type("A1", MARKUP);
    await sheet.says(MARKUP);
    expect(await becameMarkup(sheet.page)).toEqual([]);
  });

  it("shows markup that a file brings, and that a formula makes, as the text that it is", async () => {
    await sheet.select("B1");
    await sheet.says(MARKUP);
    await type("A2", "=B1");
    await sheet.says(MARKUP);
    expect(await becameMarkup(sheet.page)).toEqual([]);
  });

  it("says with the text itself that it cannot read markup as a size", async () => {
    await type("A3", "=BOLE.LOGSCALE(B1,12)");
    await sheet.says('<img src=x onerror="');
    expect(await sheet.page.innerText("#cell .answer")).toBe("#VALUE!");
    expect(await becameMarkup(sheet.page)).toEqual([]);
  });

  it("asks nobody but this machine, and could not send a number elsewhere if it wanted to", async () => {
    const elsewhere = await staticHost((path) => path);
    const free = await browser.newPage();
    await triesToSend(free, elsewhere.address);
    expect(elsewhere.asked().length, "a page without our policy does send").toBeGreaterThanOrEqual(3);
    await free.close();
    expect(sheet.asked.length).toBeGreaterThan(4);
    expect(sheet.asked.filter((url) => !url.startsWith(sheet.address) && !/^(?:data|blob):/.test(url))).toEqual([]);
    expect(await triesToSend(sheet.page, elsewhere.address)).toEqual([]);
    expect(elsewhere.asked()).toEqual([]);
    await elsewhere.close();
  });
});
