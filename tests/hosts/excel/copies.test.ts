import { describe, expect, it } from "vitest";
import type { FakeCell, FakeWorkbook } from "./fake-cells";
import { paneBeside } from "./open-pane";
import { said } from "./pane-page";
import { sheetNamed, standIn, workbook } from "./stand-in";

const LOGS: Record<string, FakeCell> = {
  A1: { value: "Log" },
  A2: { value: "5/4", format: "@" },
  B2: { value: 136, formula: '=BOLE.LOGSCALE(20, 8.5, "Doyle")' },
  B3: { value: "#N/A", formula: "=BOLE.LOGSCALE(3, 12)" },
  B4: { value: "24-1/2", formula: "=BOLE.FRACTION(24.5)" },
  C2: { value: 272, formula: "=B2*2" },
  C3: { value: "say BOLE.X", formula: '="say BOLE.X"' },
  D2: { value: 40, formula: "=Prices!B1*10" },
  D3: { value: 7, formula: "=Margin+1" },
  F1: { value: "pass", formula: "=BOLE.HEADHEIGHTS(10, 1, 0.125, 1)" },
  F2: { value: 1, from: "F1" },
  G1: { value: "blade height", from: "F1" },
  G2: { value: 10, from: "F1" },
};

const BOOK: FakeWorkbook = {
  active: "Logs",
  chosen: "A1",
  names: ["Margin"],
  sheets: {
    Logs: { cells: LOGS, notes: { B3: "ask Ann" } },
    Prices: { cells: { B1: { value: 4 } } },
    Hidden: { cells: { A1: { value: 1, formula: "=BOLE.EMC(70, 40)" } }, visibility: "Hidden" },
    Empty: { cells: {} },
  },
};

const pane = paneBeside(BOOK, "Sheets");

const copy = () => pane.page.getByRole("button", { name: "Copy for someone without the add-in" }).click();
const saysCopied = () => expect.poll(() => said(pane.page)).toMatch(/^Copied/);

describe("a copy for someone without the add-in", () => {
  it("turns Bole's cells into their values and keeps the formulas as notes", async () => {
    await copy();
    await expect
      .poll(() => said(pane.page))
      .toBe("Copied 2 sheets; 4 cells became values. The last sheet says how to hand them on");
    const { cells, notes } = await sheetNamed(pane.page, "Logs (values)");
    expect([cells["B2"], cells["B3"], cells["B4"]]).toEqual([{ value: 136 }, { value: "#N/A" }, { value: "24-1/2" }]);
    expect(notes).toMatchObject({
      B2: 'Formula: =BOLE.LOGSCALE(20, 8.5, "Doyle")',
      B3: "ask Ann",
      B4: "Formula: =BOLE.FRACTION(24.5)",
      F1: "Formula: =BOLE.HEADHEIGHTS(10, 1, 0.125, 1)",
    });
    expect(Object.values(cells).some(({ formula }) => /BOLE\.[A-Z]+\(/.test(formula ?? ""))).toBe(false);
  });

  it("keeps what a spilled answer filled", async () => {
    await copy();
    await saysCopied();
    const { cells } = await sheetNamed(pane.page, "Logs (values)");
    expect([cells["F1"], cells["G1"], cells["F2"], cells["G2"]].map((cell) => cell?.value)).toEqual([
      "pass",
      "blade height",
      1,
      10,
    ]);
  });

  it("leaves a sheet's own formulas alone and freezes those that would lead back to the workbook", async () => {
    await copy();
    await saysCopied();
    const { cells, notes } = await sheetNamed(pane.page, "Logs (values)");
    expect(cells["C2"]).toEqual(LOGS["C2"]);
    expect(cells["C3"]).toEqual(LOGS["C3"]);
    expect([cells["D2"], cells["D3"]]).toEqual([{ value: 40 }, { value: 7 }]);
    expect(notes!["D2"]).toBe("Formula: =Prices!B1*10");
  });

  it("never touches the originals, nor what is hidden", async () => {
    await copy();
    await saysCopied();
    const { sheets } = await workbook(pane.page);
    for (const name of Object.keys(BOOK.sheets)) expect(sheets[name], name).toEqual(BOOK.sheets[name]);
    expect(Object.keys(sheets).slice(4)).toEqual(["Logs (values)", "Prices (values)", "About the copies"]);
  });

  it("says on a sheet of its own what was done and when, and where a note was in the way", async () => {
    await copy();
    await saysCopied();
    const { cells } = await sheetNamed(pane.page, "About the copies");
    const texts = Object.values(cells).map(({ value }) => String(value));
    expect(texts.some((text) => /taken 20\d\d-\d\d-\d\d, \d\d:\d\d\./.test(text))).toBe(true);
    expect(texts).toContain("Logs (values)");
    expect(texts).toContain("Logs (values)!B3");
    expect(texts).toContain("=BOLE.LOGSCALE(3, 12)");
    expect((await workbook(pane.page)).active).toBe("About the copies");
  });

  it("numbers the second copies and does not copy the first", async () => {
    await copy();
    await saysCopied();
    await pane.page.evaluate(() => (document.getElementById("said")!.textContent = ""));
    await copy();
    await saysCopied();
    expect(Object.keys((await workbook(pane.page)).sheets).slice(7)).toEqual([
      "Logs (values) 2",
      "Prices (values) 2",
      "About the copies 2",
    ]);
  });

  it("writes comments where Excel is too old for notes", async () => {
    await standIn(pane.page, { ...BOOK, version: 1.12 });
    await copy();
    await saysCopied();
    expect((await sheetNamed(pane.page, "Logs (values)")).comments!["B2"]).toMatch(/^Formula: =BOLE/);
  });

  it.each([
    ["a cell is still busy", { B2: { value: "#BUSY!", formula: "=BOLE.EMC(70, 40)" } }, {}, /Logs!B2 shows #BUSY!/],
    ["a sheet is protected", LOGS, { protected: true }, /Logs is protected/],
    ["nothing asks Bole", { A1: { value: 3, formula: "=1+2" } }, {}, /No cell asks Bole/],
  ])("does nothing and says so when %s", async (_, cells: Record<string, FakeCell>, more, reason) => {
    const book = { ...BOOK, sheets: { Logs: { cells, ...more } } };
    await standIn(pane.page, book);
    await copy();
    await expect.poll(() => said(pane.page)).toMatch(reason);
    expect((await workbook(pane.page)).sheets).toEqual(book.sheets);
  });
});
