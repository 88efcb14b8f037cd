import { join } from "node:path";
import type { Locator } from "playwright-core";
import { describe, expect, it } from "vitest";
import catalog from "../../../src/catalog/catalog.json";
import { TEST_ADDRESS } from "./build";
import { paneBeside } from "./open-pane";
import { axeComplaints, NARROW, said, widthNeeded } from "./pane-page";
import { choose, contents, plainCells, standIn } from "./stand-in";

const LOGS = {
  active: "Logs",
  chosen: "D2",
  sheets: { Logs: { cells: plainCells({ A2: 20, B2: 12, A3: "a board", B3: 0.125 }) } },
};

const pane = paneBeside(LOGS, "Formulas");

/** Finds a function by its name and opens it. */
async function open(name: string) {
  await ask(name);
  const entry = pane.page
    .locator("details.entry")
    .filter({ has: pane.page.getByRole("heading", { name, exact: true }) });
  await entry.locator("summary").click();
  await entry.locator("h4").first().waitFor();
  return entry;
}

const says = () => expect.poll(() => said(pane.page));
const ask = (question: string) => pane.page.getByLabel("What do you want to know?").fill(question);
const fill = (entry: Locator, argument: string, value: string) =>
  entry.getByLabel(argument, { exact: true }).fill(value);
const showAnswer = (entry: Locator) => entry.getByRole("button", { name: "Show the answer" }).click();
const answerOf = (entry: Locator) => expect.poll(() => entry.locator("output.answer").textContent());
const put = (entry: Locator) => entry.getByRole("button", { name: "Put into the chosen cell", exact: true }).click();
const namesListed = () => pane.page.locator("details.entry > summary h3").allTextContents();

describe("the list", () => {
  it("holds every function once, by the step of the job", async () => {
    expect((await namesListed()).sort()).toEqual(catalog.map(({ name }) => name).sort());
    expect(await pane.page.locator("details.step > summary h2").allTextContents()).toContain("Wood: what it weighs");
  });

  it("answers a question with the likeliest first, and says how many there are", async () => {
    await ask("how heavy");
    expect((await namesListed())[0]).toBe("LOGWEIGHT");
    expect(await pane.page.locator("#found").textContent()).toMatch(/^\d+ found, the likeliest first$/);
    await ask("heavy zebra");
    expect(await pane.page.locator("#found").textContent()).toMatch(/none has all of these words$/);
  });

  it("says so when nothing is found, and comes back when the question is wiped out", async () => {
    await ask("zebra");
    expect(await namesListed()).toEqual([]);
    expect(await pane.page.locator("#found").textContent()).toMatch(/Nothing found/);
    await ask("");
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
    expect(await widthNeeded(pane.page)).toBe(NARROW.width);
    await pane.page.evaluate(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
    await expect.poll(() => pane.page.locator("details.entry form").count()).toBeGreaterThan(50);
    expect(await widthNeeded(pane.page)).toBe(NARROW.width);
  });
});

describe("an example put into the sheet", () => {
  const FORMULA = "=BOLE.KERFLOSS(1.125, 0.125)";
  const putExample = async () =>
    (await open("KERFLOSS")).getByRole("button", { name: `Put into the chosen cell: ${FORMULA}` }).click();

  it("goes into the chosen cell, and the pane says where", async () => {
    await putExample();
    await says().toBe(`Logs!D2 now holds ${FORMULA}`);
    expect((await contents(pane.page, "Logs"))["D2"]).toBe(FORMULA);
  });

  it("goes there once by a double click, and that is what the pane says", async () => {
    const button = (await open("KERFLOSS")).getByRole("button", { name: `Put into the chosen cell: ${FORMULA}` });
    await button.dblclick();
    await says().toBe(`Logs!D2 now holds ${FORMULA}`);
    await pane.page.waitForTimeout(100);
    expect(await said(pane.page)).toBe(`Logs!D2 now holds ${FORMULA}`);
  });

  it("never writes over what is there", async () => {
    await choose(pane.page, "A2");
    await putExample();
    await says().toBe("Not done. Logs!A2 already holds 20. Choose an empty cell.");
    expect((await contents(pane.page, "Logs"))["A2"]).toBe(20);
  });

  it.each([
    ["InvalidOperationInCellEditMode", /still being typed in\. Press Enter or Esc/],
    ["AccessDenied", /protected/],
    ["InvalidSelection", /Choose one cell/],
    ["SomethingNew", /Excel refused: refused/],
  ])("says why it could not when Excel answers %s", async (refuses, reason) => {
    await standIn(pane.page, { ...LOGS, sheets: { Logs: { cells: {} } }, refuses });
    await putExample();
    await says().toMatch(reason);
    expect(await contents(pane.page, "Logs")).toEqual({});
  });

  it("says so outside Excel", async () => {
    await pane.page.reload();
    await putExample();
    await says().toMatch(/not open inside Excel/);
  });
});

describe("a formula built from one's own numbers", () => {
  it("shows the answer first, then goes into the chosen cell, by keyboard alone", async () => {
    const { keyboard } = pane.page;
    await pane.page.getByLabel("What do you want to know?").focus();
    await keyboard.type("kerfloss");
    await keyboard.press("Tab");
    await keyboard.press("Enter");
    await pane.page.locator("details.entry[open] form").waitFor();
    await keyboard.press("Tab");
    await keyboard.type("1 1/8");
    for (let i = 0; i < 2; i++) await keyboard.press("Tab");
    await keyboard.type("1/8");
    await keyboard.press("Enter");
    await expect.poll(() => pane.page.locator("output.answer").textContent()).toContain("Answer: 0.1");
    for (let i = 0; i < 3; i++) await keyboard.press("Tab");
    await keyboard.press("Space");
    await says().toBe('Logs!D2 now holds =BOLE.KERFLOSS("1 1/8", "1/8")');
  });

  it("takes its arguments from chosen cells, reads them, and names them without their own sheet", async () => {
    const entry = await open("KERFLOSS");
    await choose(pane.page, "A2:A3");
    await entry.getByRole("button", { name: "Use the chosen cells for thickness" }).click();
    await says().toBe("thickness comes from Logs!A2:A3");
    await fill(entry, "kerf", "B3");
    await showAnswer(entry);
    await answerOf(entry).toContain("0.00621118");
    await answerOf(entry).toContain("#VALUE!: thickness");
    await choose(pane.page, "E5");
    await put(entry);
    await says().toBe("Logs!E5 now holds =BOLE.KERFLOSS(A2:A3, B3)");
  });

  it("says in words what is missing or cannot be read", async () => {
    const entry = await open("KERFLOSS");
    await showAnswer(entry);
    await answerOf(entry).toContain("Fill in your numbers first.");
    await fill(entry, "thickness", "a board");
    await showAnswer(entry);
    await answerOf(entry).toMatch(/#VALUE!: thickness: wanted .*"a board"/);
  });

  it("leaves to Excel what only Excel can work out", async () => {
    const entry = await open("KERFLOSS");
    await fill(entry, "thickness", "Boards[Thickness]");
    await showAnswer(entry);
    await answerOf(entry).toContain("=BOLE.KERFLOSS(Boards[Thickness])");
    expect(await entry.locator("output.answer").textContent()).toContain("The sheet has to work this one out");
  });
});

describe("the page", () => {
  it.each(["light", "dark"] as const)("is sound by axe on %s, opened and with an answer", async (colorScheme) => {
    await pane.page.emulateMedia({ colorScheme });
    const entry = await open("HEADHEIGHTS");
    const numbers = { start: "10", thickness: "1 1/8", kerf: "1/8", count: "3" };
    for (const [name, value] of Object.entries(numbers)) await fill(entry, name, value);
    await showAnswer(entry);
    await expect.poll(() => entry.locator("output.answer td").count()).toBeGreaterThan(10);
    await put(entry);
    await says().toMatch(/^Logs!D2 now holds/);
    const complaints = await axeComplaints(pane.page);
    await pane.page.emulateMedia({ colorScheme: "light" });
    expect(complaints).toEqual([]);
  });

  it("is still a reference when Microsoft's script does not come", async () => {
    const offline = await pane.page.context().browser()!.newPage();
    await offline.route("**/*", (route) => route.abort());
    await offline.route(`${TEST_ADDRESS}/*`, (route) =>
      route.fulfill({ path: join(pane.folder, new URL(route.request().url()).pathname.slice("/addin".length)) }),
    );
    await offline.goto(`${TEST_ADDRESS}/taskpane.html`);
    expect(await offline.locator("details.entry").count()).toBe(catalog.length);
    await offline.close();
  });

  it("breaks none of its own rules and asks nothing of the network", () => {
    expect(pane.complaints).toEqual([]);
    expect(pane.strayRequests).toEqual([]);
  });
});
