import { describe, expect, it } from "vitest";
import { READY_SHEETS } from "../../../src/sheets/ready";
import { SPECIES_NAMES } from "../../../src/math/wood/species";
import { paneBeside } from "./open-pane";
import { axeByDayAndNight, NARROW, said, widthNeeded } from "./pane-page";
import { contents, plainCells, sheetNamed, standIn, workbook } from "./stand-in";

const OWN = { active: "Mine", chosen: "A1", sheets: { Mine: { cells: plainCells({ A1: "my own" }) } } };

const pane = paneBeside(OWN, "Sheets");

const add = (title: string) => pane.page.getByRole("button", { name: `Add the sheet ${title}` }).click();
const saysAdded = (name: string) =>
  expect.poll(() => said(pane.page)).toMatch(new RegExp(`^Added the sheet ${name}\\.`));

describe("a ready sheet", () => {
  it.each(READY_SHEETS)("$title goes into the workbook as a table whose columns calculate", async (sheet) => {
    await add(sheet.title);
    await saysAdded(sheet.title);
    const { tables = {}, cells } = await sheetNamed(pane.page, sheet.title);
    const area = tables[sheet.table]!;
    const [, column = "", headerRow = "", lastColumn = "", lastRow = ""] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(area)!;
    expect([column, lastColumn]).toEqual(["A", String.fromCharCode(64 + sheet.columns.length)]);
    expect(Number(lastRow) - Number(headerRow)).toBe(sheet.examples.length + sheet.blankRows);
    sheet.columns.forEach(({ heading, formula, kind }, i) => {
      const letter = String.fromCharCode(65 + i);
      expect(cells[`${letter}${headerRow}`]!.value).toBe(heading);
      for (let row = Number(headerRow) + 1; row <= Number(lastRow); row++) {
        const cell = cells[`${letter}${row}`];
        if (formula) expect(cell!.formula, `${letter}${row}`).toMatch(/^=.*(BOLE\.|IF\()/);
        else if (kind === "text") expect(cell!.format, `${letter}${row}`).toBe("@");
      }
    });
    expect((await workbook(pane.page)).active).toBe(sheet.title);
    expect(await contents(pane.page, "Mine")).toEqual({ A1: "my own" });
  });

  it("sets it up for paper, a wide one with its table alone on pages side by side", async () => {
    await add("Log book");
    await saysAdded("Log book");
    await add("Price list");
    await saysAdded("Price list");
    const [book, prices] = [await sheetNamed(pane.page, "Log book"), await sheetNamed(pane.page, "Price list")];
    const [from = "", to = ""] = book.tables!.LogBook!.split(":");
    const headings = from.slice(1);
    expect(book.pages).toMatchObject({ orientation: "Landscape", area: `${from}:${to}`, titleColumns: "$A:$A" });
    expect(book.pages).toMatchObject({ titleRows: `$${headings}:$${headings}`, rightFooter: "Page &P of &N" });
    expect(book.pages!.breaks).toHaveLength(1);
    expect((book.pages!.zoom as { scale: number }).scale).toBeGreaterThanOrEqual(80);
    expect(prices.pages).toMatchObject({ zoom: { horizontalFitToPages: 1 }, centerFooter: "&A" });
    expect(prices.pages!.breaks).toBeUndefined();
  });

  it("keeps 8-6 and 5/4 as they were typed", async () => {
    await add("Sawing bill");
    await saysAdded("Sawing bill");
    const values = Object.values((await sheetNamed(pane.page, "Sawing bill")).cells).map(({ value }) => value);
    expect(values).toContain("8-6");
    expect(values).toContain("4/4");
    expect(values).not.toContain(46146);
  });

  it("takes a number when its name, or its table's, is taken", async () => {
    await standIn(pane.page, { ...OWN, names: ["LogBook2"], sheets: { ...OWN.sheets, "log BOOK": { cells: {} } } });
    for (const name of ["Log book 2", "Log book 3"]) {
      await add("Log book");
      await saysAdded(name);
    }
    const { sheets } = await workbook(pane.page);
    expect(sheets["log BOOK"]).toEqual({ cells: {} });
    expect(Object.keys(sheets["Log book 2"]!.tables!)).toEqual(["LogBook"]);
    expect(Object.keys(sheets["Log book 3"]!.tables!)).toEqual(["LogBook3"]);
    const formulas = Object.values(sheets["Log book 3"]!.cells).map(({ formula }) => formula);
    expect(formulas).toContain("=SUM(LogBook3[Net])");
  });

  it("offers species from a sheet in sight, made once, and rules in the cell itself", async () => {
    for (const title of ["Log book", "Price list"]) {
      await add(title);
      await saysAdded(title);
    }
    const { sheets } = await workbook(pane.page);
    expect(Object.keys(sheets)).toEqual(["Mine", "Log book", "Bole lists", "Price list"]);
    const { cells } = sheets["Bole lists"]!;
    const count = Object.keys(SPECIES_NAMES).length;
    expect([cells["A2"], cells[`A${count + 1}`]].map((cell) => cell!.value)).toEqual(["ailanthus", "yellow-poplar"]);
    const rules = Object.values(sheets["Log book"]!.validations!) as { rule: { list: { source: string } } }[];
    const sources = rules.map(({ rule }) => rule.list.source);
    expect(sources).toContain(`='Bole lists'!$A$2:$A$${count + 1}`);
    expect(sources.some((source) => source.split(",").includes("Doyle"))).toBe(true);
    expect(sources.every((source) => source.length <= 255)).toBe(true);
  });

  it("does not trust a lists sheet of someone else's", async () => {
    await standIn(pane.page, {
      ...OWN,
      sheets: { ...OWN.sheets, "Bole lists": { cells: plainCells({ A1: "groceries" }) } },
    });
    await add("Log book");
    await saysAdded("Log book");
    expect(Object.keys((await workbook(pane.page)).sheets)).toContain("Bole lists 2");
    expect(await contents(pane.page, "Bole lists")).toEqual({ A1: "groceries" });
  });

  it("says why it could not, and leaves nothing half done", async () => {
    await standIn(pane.page, { ...OWN, refuses: "AccessDenied" });
    await add("Log book");
    await expect.poll(() => said(pane.page)).toMatch(/^Not done\. .*protected/);
    expect(Object.keys((await workbook(pane.page)).sheets)).toEqual(["Mine"]);
    await standIn(pane.page, { ...OWN, version: 1.7 });
    await add("Log book");
    await expect.poll(() => said(pane.page)).toMatch(/too old/);
  });
});

describe("the part Sheets", () => {
  it("lists every ready sheet with what it is for", async () => {
    for (const { title, lead } of READY_SHEETS) {
      await pane.page.getByRole("heading", { name: title, exact: true }).waitFor();
      expect(await pane.page.getByRole("region", { name: "Sheets" }).textContent()).toContain(lead);
    }
  });

  it("adds one by keyboard alone", async () => {
    await pane.page.getByLabel("What do you want to know?").waitFor({ state: "hidden" });
    await pane.page.getByRole("navigation").getByRole("button", { name: "Sheets" }).focus();
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Tab");
    expect(await pane.page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe(
      `Add the sheet ${READY_SHEETS[0]!.title}`,
    );
    await pane.page.keyboard.press("Enter");
    await saysAdded(READY_SHEETS[0]!.title);
  });

  it("is sound by axe by day and by night, and fits into 320 pixels", async () => {
    await add("Load plan");
    await saysAdded("Load plan");
    expect(await axeByDayAndNight(pane.page)).toEqual([]);
    expect(await widthNeeded(pane.page)).toBe(NARROW.width);
  });
});
