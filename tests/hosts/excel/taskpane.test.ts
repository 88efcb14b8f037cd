import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import catalog from "../../../src/catalog/catalog.json";
import { openBrowser } from "../../browser";
import { visit, type Visit } from "./browser-page";
import { builtFolder, TEST_ADDRESS } from "./build";
import { axeComplaints, NARROW, widthNeeded } from "./pane-page";
import { choose, contents, plainCells, standIn } from "./stand-in";

let browser: Browser;
let folder: string;
let visited: Visit;
let page: Page;

beforeAll(async () => {
  folder = await builtFolder();
  browser = await openBrowser();
  visited = await visit(browser, folder, "taskpane.html", { viewport: NARROW });
  page = visited.page;
});

afterAll(() => browser.close());

beforeEach(async () => {
  await page.reload();
  await standIn(page, LOGS);
});

const LOGS = {
  active: "Logs",
  chosen: "D2",
  sheets: { Logs: { cells: plainCells({ A2: 20, B2: 12, A3: "a board", B3: 0.125 }) } },
};

/** Finds a function by its name and opens it. */
async function open(name: string) {
  await page.getByLabel("What do you want to know?").fill(name);
  const entry = page.locator("details.entry").filter({ has: page.getByRole("heading", { name, exact: true }) });
  await entry.locator("summary").click();
  await entry.locator("h4").first().waitFor();
  return entry;
}

const said = () => page.locator("#said").textContent();
const namesListed = () => page.locator("details.entry > summary h3").allTextContents();

describe("the list", () => {
  it("holds every function once, by the step of the job", async () => {
    expect((await namesListed()).sort()).toEqual(catalog.map(({ name }) => name).sort());
    expect(await page.locator("details.step > summary h2").allTextContents()).toContain("Wood: what it weighs");
  });

  it("answers a question with the likeliest first, and says how many there are", async () => {
    await page.getByLabel("What do you want to know?").fill("how heavy");
    expect((await namesListed())[0]).toBe("LOGWEIGHT");
    expect(await page.locator("#found").textContent()).toMatch(/^\d+ found, the likeliest first$/);
    await page.getByLabel("What do you want to know?").fill("heavy zebra");
    expect(await page.locator("#found").textContent()).toMatch(/none has all of these words$/);
  });

  it("says so when nothing is found, and comes back when the question is wiped out", async () => {
    await page.getByLabel("What do you want to know?").fill("zebra");
    expect(await namesListed()).toEqual([]);
    expect(await page.locator("#found").textContent()).toMatch(/Nothing found/);
    await page.getByLabel("What do you want to know?").fill("");
    expect((await namesListed()).length).toBe(catalog.length);
  });
});

describe("a function opened", () => {
  it("shows arguments, examples, source, grade and what to be careful of", async () => {
    const { params, examples, grade, cautions, formulas } = catalog.find(({ name }) => name === "LOGWEIGHT")!;
    const text = (await (await open("LOGWEIGHT")).textContent())!;
    for (const expected of [
      ...params.map((p) => p.text),
      ...examples.map((e) => e.formula),
      ...cautions,
      `Grade: ${grade}`,
    ])
      expect(text).toContain(expected);
    for (const { formula, sources } of formulas) for (const part of [formula, ...sources]) expect(text).toContain(part);
    expect(cautions.length).toBeGreaterThan(0);
  });

  it("fits into 320 pixels without scrolling sideways, whichever it is", async () => {
    expect(await widthNeeded(page)).toBe(NARROW.width);
    await page.evaluate(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
    await expect.poll(() => page.locator("details.entry form").count()).toBeGreaterThan(50);
    expect(await widthNeeded(page)).toBe(NARROW.width);
  });
});

describe("an example put into the sheet", () => {
  const FORMULA = "=BOLE.KERFLOSS(1.125, 0.125)";
  const putExample = async () =>
    (await open("KERFLOSS")).getByRole("button", { name: `Put into the chosen cell: ${FORMULA}` }).click();

  it("goes into the chosen cell, and the pane says where", async () => {
    await putExample();
    await expect.poll(said).toBe(`Logs!D2 now holds ${FORMULA}`);
    expect((await contents(page, "Logs"))["D2"]).toBe(FORMULA);
  });

  it("never writes over what is there", async () => {
    await choose(page, "A2");
    await putExample();
    await expect.poll(said).toBe("Not done. Logs!A2 already holds 20. Choose an empty cell.");
    expect((await contents(page, "Logs"))["A2"]).toBe(20);
  });

  it.each([
    ["InvalidOperationInCellEditMode", /still being typed in\. Press Enter or Esc/],
    ["AccessDenied", /protected/],
    ["InvalidSelection", /Choose one cell/],
    ["SomethingNew", /Excel refused: refused/],
  ])("says why it could not when Excel answers %s", async (refuses, reason) => {
    await standIn(page, { ...LOGS, sheets: { Logs: { cells: {} } }, refuses });
    await putExample();
    await expect.poll(said).toMatch(reason);
    expect(await contents(page, "Logs")).toEqual({});
  });

  it("says so outside Excel", async () => {
    await page.reload();
    await putExample();
    await expect.poll(said).toMatch(/not open inside Excel/);
  });
});

describe("a formula built from one's own numbers", () => {
  it("shows the answer first, then goes into the chosen cell, by keyboard alone", async () => {
    await page.getByLabel("What do you want to know?").focus();
    await page.keyboard.type("kerfloss");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.locator("details.entry[open] form").waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.type("1 1/8");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.type("1/8");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("output.answer").textContent()).toContain("Answer: 0.1");
    for (let i = 0; i < 3; i++) await page.keyboard.press("Tab");
    await page.keyboard.press("Space");
    await expect.poll(said).toBe('Logs!D2 now holds =BOLE.KERFLOSS("1 1/8", "1/8")');
  });

  it("takes its arguments from chosen cells, reads them, and names them without their own sheet", async () => {
    const entry = await open("KERFLOSS");
    await choose(page, "A2:A3");
    await entry.getByRole("button", { name: "Use the chosen cells for thickness" }).click();
    await expect.poll(said).toBe("thickness comes from Logs!A2:A3");
    await entry.getByLabel("kerf", { exact: true }).fill("B3");
    await entry.getByRole("button", { name: "Show the answer" }).click();
    const answer = () => entry.locator("output.answer").textContent();
    await expect.poll(answer).toContain("0.00621118");
    expect(await answer()).toContain("#VALUE!: thickness");
    await choose(page, "E5");
    await entry.getByRole("button", { name: "Put into the chosen cell", exact: true }).click();
    await expect.poll(said).toBe("Logs!E5 now holds =BOLE.KERFLOSS(A2:A3, B3)");
  });

  it("says in words what is missing or cannot be read", async () => {
    const entry = await open("KERFLOSS");
    await entry.getByRole("button", { name: "Show the answer" }).click();
    await expect.poll(() => entry.locator("output.answer").textContent()).toContain("Fill in your numbers first.");
    await entry.getByLabel("thickness", { exact: true }).fill("a board");
    await entry.getByRole("button", { name: "Show the answer" }).click();
    await expect
      .poll(() => entry.locator("output.answer").textContent())
      .toMatch(/#VALUE!: thickness: wanted .*"a board"/);
  });

  it("leaves to Excel what only Excel can work out", async () => {
    const entry = await open("KERFLOSS");
    await entry.getByLabel("thickness", { exact: true }).fill("Boards[Thickness]");
    await entry.getByRole("button", { name: "Show the answer" }).click();
    await expect
      .poll(() => entry.locator("output.answer").textContent())
      .toContain("=BOLE.KERFLOSS(Boards[Thickness])");
    expect(await entry.locator("output.answer").textContent()).toContain("Excel has to work this one out");
  });
});

describe("the page", () => {
  it.each(["light", "dark"] as const)("is sound by axe on %s, opened and with an answer", async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    const entry = await open("HEADHEIGHTS");
    for (const [name, value] of [
      ["start", "10"],
      ["thickness", "1 1/8"],
      ["kerf", "1/8"],
      ["count", "3"],
    ] as const)
      await entry.getByLabel(name, { exact: true }).fill(value);
    await entry.getByRole("button", { name: "Show the answer" }).click();
    await expect.poll(() => entry.locator("output.answer td").count()).toBeGreaterThan(10);
    await entry.getByRole("button", { name: "Put into the chosen cell", exact: true }).click();
    await expect.poll(said).toMatch(/^Logs!D2 now holds/);
    const complaints = await axeComplaints(page);
    await page.emulateMedia({ colorScheme: "light" });
    expect(complaints).toEqual([]);
  });

  it("is still a reference when Microsoft's script does not come", async () => {
    const offline = await browser.newPage();
    await offline.route("**/*", (route) => route.abort());
    await offline.route(`${TEST_ADDRESS}/*`, (route) =>
      route.fulfill({ path: join(folder, new URL(route.request().url()).pathname.slice("/addin".length)) }),
    );
    await offline.goto(`${TEST_ADDRESS}/taskpane.html`);
    expect(await offline.locator("details.entry").count()).toBe(catalog.length);
    await offline.close();
  });

  it("breaks none of its own rules and asks nothing of the network", () => {
    expect(visited.complaints).toEqual([]);
    expect(visited.strayRequests).toEqual([]);
  });
});
