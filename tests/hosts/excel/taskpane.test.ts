import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import catalog from "../../../src/catalog/catalog.json";
import { openBrowser } from "../../browser";
import { visit, type Visit } from "./browser-page";
import { builtFolder, TEST_ADDRESS } from "./build";
import { cells, choose, standIn } from "./stand-in";

/** The narrowest a task pane gets. */
const NARROW = { width: 320, height: 700 };

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
  await standIn(page, { name: "Logs", chosen: "D2", cells: { A2: 20, B2: 12, A3: "a board", B3: 0.125 } });
});

/** Finds a function by its name and opens it. */
async function open(name: string) {
  await page.getByLabel("What do you want to know?").fill(name);
  const entry = page.locator("details.entry").filter({ has: page.getByRole("heading", { name, exact: true }) });
  await entry.locator("summary").click();
  return entry;
}

const said = () => page.locator("#said").textContent();
const namesListed = () => page.locator("details.entry > summary h3").allTextContents();
const widthNeeded = () => page.evaluate(() => document.documentElement.scrollWidth);

describe("the list", () => {
  it("holds every function once, by the step of the job", async () => {
    expect((await namesListed()).sort()).toEqual(catalog.map(({ name }) => name).sort());
    expect(await page.locator("details.step > summary h2").allTextContents()).toContain("Wood: what it weighs");
  });

  it.each([
    ["how heavy", "LOGWEIGHT"],
    ["how heavy is this log", "LOGWEIGHT"],
    ["sawdust", "KERFLOSS"],
    ["logscale", "LOGSCALE"],
    ["Weight of a log", "LOGWEIGHT"],
  ])("answers %j with %s among the first three", async (question, wanted) => {
    await page.getByLabel("What do you want to know?").fill(question);
    expect((await namesListed()).slice(0, 3)).toContain(wanted);
    expect(await page.locator("#found").textContent()).toMatch(/^\d+ found/);
  });

  it("says so when nothing is found, and comes back when the question is wiped out", async () => {
    await page.getByLabel("What do you want to know?").fill("zebra crossing");
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
    expect(await widthNeeded()).toBe(NARROW.width);
    await page.evaluate(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
    await expect.poll(() => page.locator("details.entry form").count()).toBeGreaterThan(50);
    expect(await widthNeeded()).toBe(NARROW.width);
  });
});

describe("an example put into the sheet", () => {
  const FORMULA = "=BOLE.KERFLOSS(1.125, 0.125)";
  const putExample = async () =>
    (await open("KERFLOSS")).getByRole("button", { name: `Put into the chosen cell: ${FORMULA}` }).click();

  it("goes into the chosen cell, and the pane says where", async () => {
    await putExample();
    await expect.poll(said).toBe(`Logs!D2 now holds ${FORMULA}`);
    expect((await cells(page))["D2"]).toBe(FORMULA);
  });

  it("never writes over what is there", async () => {
    await choose(page, "A2");
    await putExample();
    await expect.poll(said).toBe("Not done. Logs!A2 already holds 20. Choose an empty cell.");
    expect((await cells(page))["A2"]).toBe(20);
  });

  it.each([
    ["InvalidOperationInCellEditMode", /still being typed in\. Press Enter or Esc/],
    ["AccessDenied", /sheet is protected/],
    ["InvalidSelection", /Choose one cell/],
    ["SomethingNew", /Excel refused: refused/],
  ])("says why it could not when Excel answers %s", async (refuses, reason) => {
    await standIn(page, { name: "Logs", chosen: "D2", cells: {}, refuses });
    await putExample();
    await expect.poll(said).toMatch(reason);
    expect(await cells(page)).toEqual({});
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
  it("gives every field and button a name that a screen reader can say", async () => {
    await open("LOGWEIGHT");
    const nameless = await page.evaluate(
      () =>
        [...document.querySelectorAll("input, button")].filter(
          (control) =>
            !control.getAttribute("aria-label") &&
            !control.textContent &&
            !(control as HTMLInputElement).labels?.length,
        ).length,
    );
    expect(nameless).toBe(0);
    expect(await page.locator("html").getAttribute("lang")).toBe("en");
    expect(await page.locator("#said").getAttribute("role")).toBe("status");
  });

  it.each(["light", "dark"] as const)(
    "is readable on %s: every text stands out from its ground by 4.5 to 1",
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      await open("LOGWEIGHT");
      const worst = await page.evaluate(worstContrast);
      await page.emulateMedia({ colorScheme: "light" });
      expect(worst).toBeGreaterThanOrEqual(4.5);
    },
  );

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

/** The smallest contrast of any text with the ground it stands on, by the formula of WCAG 2.2. */
function worstContrast(): number {
  const numbers = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const linear = (channel: number) =>
    channel / 255 <= 0.04045 ? channel / 255 / 12.92 : ((channel / 255 + 0.055) / 1.055) ** 2.4;
  const luminance = ([r = 0, g = 0, b = 0]: number[]) => 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
  const ground = (start: Element): number[] => {
    for (let at: Element | null = start; at; at = at.parentElement) {
      const colour = numbers(getComputedStyle(at).backgroundColor);
      if (colour.length === 3 || colour[3] === 1) return colour;
    }
    return [255, 255, 255];
  };
  const texts = [...document.querySelectorAll("body *")].filter((element) =>
    [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()),
  );
  return Math.min(
    ...texts.map((element) => {
      const [a, b] = [luminance(numbers(getComputedStyle(element).color)), luminance(ground(element))];
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }),
  );
}
