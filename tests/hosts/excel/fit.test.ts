import { describe, expect, it } from "vitest";
import { registry } from "../../../src/functions/registry";
import { paneBeside } from "./open-pane";
import { axeByDayAndNight, NARROW, said, widthNeeded } from "./pane-page";
import { choose, contents, plainCells, standIn, workbook } from "./stand-in";
import type { FakeWorkbook } from "./fake-cells";

/** An invented workbook: a table with a row of totals, and a plain range on a sheet of its own. */
const BOOK: FakeWorkbook = {
  active: "Logs",
  chosen: "B3",
  sheets: {
    Logs: {
      tables: { Yard: "A2:D6" },
      totals: ["Yard"],
      cells: plainCells({
        ...{ A1: "Logs of an invented yard" },
        ...{ A2: "Spp", B2: "Sm end", C2: "Len ft", D2: "Dia (cm) #2" },
        ...{ A3: "red oak", B3: 20, C3: 12, D3: 60 },
        ...{ A4: "white oak", B4: 16, C4: "8-6", D4: 51 },
        ...{ A5: "red oak", B5: 18, C5: 10, D5: 55 },
        ...{ A6: "Total", D6: "=SUBTOTAL(109,[Dia (cm) '#2])" },
      }),
    },
    Range: {
      cells: plainCells({
        ...{ A1: "Dia (cm)", B1: "Length (m)", C1: "Board feet", D1: "" },
        ...{ A2: 52, B2: 2.4, A3: 47, B3: 3.1, A5: 61, B5: 2.9, A6: "Total" },
        ...{ F2: "a note" },
      }),
    },
    Empty: { cells: plainCells({ A1: "Dia", B1: "Len" }) },
    Bare: { cells: plainCells({ A1: 18, B1: 12, A2: 20, B2: 10 }) },
  },
};

const pane = paneBeside(BOOK, "Formulas");
const says = () => expect.poll(() => said(pane.page));
const fit = () => pane.page.getByRole("region", { name: "Fit LOGSCALE to my sheet" });
const column = (name: string) => fit().getByLabel(`Column for ${name}`);
const add = () => fit().getByRole("button", { name: "Add the column" }).click();

/** Opens the form of LOGSCALE beside a cell, before or after changing the workbook. */
async function openBeside(sheet: string, chosen: string, change: Partial<FakeWorkbook["sheets"][string]> = {}) {
  const sheets = { ...BOOK.sheets, [sheet]: { ...BOOK.sheets[sheet]!, ...change } };
  await standIn(pane.page, { ...BOOK, sheets, active: sheet, chosen });
  await pane.page.getByLabel("What do you want to know?").fill("LOGSCALE");
  await pane.page.locator("details.entry > summary").first().click();
}

/** Board feet as the pane writes them. */
const inThePane = (diameter: unknown, length: unknown) =>
  Number(registry["LOGSCALE"]!([[diameter]], [[length]])[0]![0]).toLocaleString("en-US", {
    maximumSignificantDigits: 6,
  });

const chosenIn = (name: string) => column(name).locator("option:checked").textContent();
const tell = () =>
  pane.page.evaluate(() => (window as unknown as { standIn: { listener?: () => void } }).standIn.listener?.());

describe("a function's form beside a table of Excel's", () => {
  it("offers the columns that fit, shows the first rows, and adds a column with structured references", async () => {
    await openBeside("Logs", "B3");
    expect(await chosenIn("diameter")).toBe("B: Sm end");
    expect(await chosenIn("length")).toBe("C: Len ft");
    await expect
      .poll(() => fit().locator(".rows li").allTextContents())
      .toEqual([
        `Row 3 (20, 12): ${inThePane(20, 12)}`,
        `Row 4 (16, 8-6): ${inThePane(16, "8-6")}`,
        `Row 5 (18, 10): ${inThePane(18, 10)}`,
      ]);
    expect(await fit().textContent()).toContain("It goes into column E. Nothing is written over.");
    expect(await fit().locator("code").textContent()).toBe("=BOLE.LOGSCALE([@[Sm end]], [@[Len ft]])");
    await add();
    await says().toBe("Logs!E2:E5 now holds Board feet");
    const cells = await contents(pane.page, "Logs");
    expect([cells["E2"], cells["E3"], cells["E5"]]).toEqual([
      "Board feet",
      "=BOLE.LOGSCALE([@[Sm end]], [@[Len ft]])",
      "=BOLE.LOGSCALE([@[Sm end]], [@[Len ft]])",
    ]);
    expect(cells["E6"]).toBeUndefined();
    expect((await workbook(pane.page)).sheets["Logs"]!.tables).toEqual({ Yard: "A2:E6" });
  });

  it("says the unit of a heading in the formula, and spells a heading with signs as Excel wants it", async () => {
    await openBeside("Logs", "B3");
    await column("diameter").selectOption({ label: "D: Dia (cm) #2" });
    await expect
      .poll(() => fit().locator("code").textContent())
      .toBe(`=BOLE.LOGSCALE([@[Dia (cm) '#2]]&" cm", [@[Len ft]])`);
    expect(await fit().textContent()).toContain("Read as cm, as its heading says.");
  });

  it("takes for every row what is typed below, and keeps cells that are named there in their place", async () => {
    await openBeside("Logs", "B3");
    const form = pane.page.getByRole("form", { name: "Your numbers for LOGSCALE" });
    await form.getByLabel("rule (may be left out)", { exact: true }).fill("Doyle");
    await expect.poll(() => fit().locator(".rows li").first().textContent()).toBe("Row 3 (20, 12): 192");
    await form.getByLabel("rule (may be left out)", { exact: true }).fill("Range!F2");
    await expect.poll(() => fit().locator("code").textContent()).toContain(", Range!$F$2)");
  });

  it("refuses in words where something stands right of the table, or the sheet is protected", async () => {
    await openBeside("Logs", "B3", { cells: { ...BOOK.sheets["Logs"]!.cells, E4: { value: "mine" } } });
    await add();
    await says().toMatch(/^Not done\. The cells right of the table Yard are not empty, and nothing is written over/);
    await openBeside("Logs", "C3", { protected: true });
    await add();
    await says().toBe("Not done. The sheet Logs is protected. Unprotect it first, or work on a copy of it.");
    expect((await contents(pane.page, "Logs"))["E2"]).toBeUndefined();
  });
});

describe("a function's form beside a range with headings", () => {
  it("fills the filled rows of the next free column, under a heading that nobody has", async () => {
    await openBeside("Range", "B5");
    await expect.poll(() => fit().getByLabel("Heading of the new column").inputValue()).toBe("Board feet 2");
    await add();
    await says().toBe("Range!D1:D6 now holds Board feet 2");
    const cells = await contents(pane.page, "Range");
    expect(["D1", "D2", "D3", "D4", "D5", "D6", "F2"].map((address) => cells[address])).toEqual([
      "Board feet 2",
      '=BOLE.LOGSCALE(A2&" cm", B2&" m")',
      '=BOLE.LOGSCALE(A3&" cm", B3&" m")',
      undefined,
      '=BOLE.LOGSCALE(A5&" cm", B5&" m")',
      undefined,
      "a note",
    ]);
  });

  it("writes formulas, not text, into cells that are formatted as Text", async () => {
    await openBeside("Range", "B5", { cells: { ...BOOK.sheets["Range"]!.cells, D2: { value: "", format: "@" } } });
    await add();
    await says().toMatch(/^Range!D1:D6/);
    expect((await workbook(pane.page)).sheets["Range"]!.cells["D2"]).toMatchObject({ format: "General" });
  });

  it("follows the choice of another cell, and goes where there is nothing to fit", async () => {
    await openBeside("Range", "B5");
    await fit().getByRole("heading", { name: "Fit to my sheet" }).waitFor();
    await choose(pane.page, "K40");
    await tell();
    await fit().waitFor({ state: "hidden" });
    await choose(pane.page, "A2");
    await tell();
    await fit().waitFor({ state: "visible" });
  });

  it("says what it needs where there are no headings", async () => {
    await openBeside("Bare", "A2");
    await expect.poll(() => fit().textContent()).toMatch(/numbers here, but no headings above them\. Type a heading/);
    expect(await fit().getByRole("button").count()).toBe(0);
  });

  it("leaves the choice to the person where a column is missing, and says which", async () => {
    await openBeside("Range", "B5");
    await column("length").selectOption("");
    await expect.poll(() => fit().textContent()).toContain("Choose a column for length, or type below");
    await add();
    await says().toMatch(/^Not done\. Choose a column for length/);
  });
});

describe("the part itself", () => {
  it("stays hidden outside Excel", async () => {
    await pane.page.reload();
    await pane.page.getByLabel("What do you want to know?").fill("LOGSCALE");
    await pane.page.locator("details.entry > summary").first().click();
    await pane.page.getByRole("form", { name: "Your numbers for LOGSCALE" }).waitFor();
    expect(await fit().count()).toBe(0);
  });

  it("is sound by axe by day and by night, and does not scroll sideways", async () => {
    await openBeside("Logs", "B3");
    await fit().getByRole("button", { name: "Add the column" }).waitFor();
    expect(await axeByDayAndNight(pane.page)).toEqual([]);
    expect(await widthNeeded(pane.page)).toBe(NARROW.width);
  });
});
