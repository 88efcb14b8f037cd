import { describe, expect, it } from "vitest";
import { paneBeside } from "./open-pane";
import { axeComplaints } from "./pane-page";
import { choose } from "./stand-in";

const BOOK = {
  active: "Logs",
  chosen: "D2",
  names: ["Rule", "Twice"],
  refersTo: { Rule: "=Logs!$F$1", Twice: "=Logs!$F$1*2" },
  sheets: {
    Logs: {
      tables: { Scale: "A1:D3" },
      cells: {
        ...{ A1: { value: "Dia" }, B1: { value: "Len ft" }, C1: { value: "Note" }, D1: { value: "Feet" } },
        ...{ A2: { value: "20" }, B2: { value: "8-6", format: "@" }, A3: { value: 3 }, B3: { value: 12 } },
        F1: { value: "Doyle" },
        D2: { value: 136, formula: "=BOLE.LOGSCALE([@Dia], Scale[@[Len ft]], Rule)" },
        D3: { value: "#N/A", formula: '=BOLE.LOGSCALE(A3, B3, "Doyle")' },
        G1: { value: 1, formula: "=BOLE.LOGSCALE(A2*2, 12)" },
        G2: { value: 1, formula: "=IF(A2>1, BOLE.SMALIAN(20, 24, A2:A3), 0)+BOLE.EMC(70, 0.65)" },
        G3: { value: 46150, format: "d-mmm" },
        G4: { value: 46150, format: "0" },
        G5: { value: 5 },
        G6: { value: 46150, format: "yyyy-mm-dd" },
      },
    },
  },
};

const pane = paneBeside(BOOK, "This cell");
const told = () => expect.poll(() => pane.page.locator("#this-cell").innerText());

/** Chooses a cell and lets the pane hear of it. */
async function chosen(address: string) {
  await choose(pane.page, address);
  await pane.page.getByRole("button", { name: "Read the chosen cell" }).click();
  await told().toContain(`Logs!${address}`);
}

describe("the chosen cell", () => {
  it("is told with each argument as Bole reads it, through a table's columns and a name", async () => {
    await chosen("D2");
    await told().toContain("diameter 20 inches");
    const text = await pane.page.locator("#this-cell").innerText();
    expect(text).toContain("length 8.5 feet");
    expect(text).toContain("rule Doyle");
    expect(text).toMatch(/rounding left out/);
    expect(text).toContain("Answer: 136");
    expect(text).toMatch(/Rests on: published/);
    expect(await axeComplaints(pane.page)).toEqual([]);
  });

  it("says in words why it has no answer", async () => {
    await chosen("D3");
    await told().toMatch(/#N\/A: Doyle diameter \(in\): wanted 4 to 300, got 3/);
  });

  it("leaves a calculation within the formula to the sheet, and says so", async () => {
    await chosen("G1");
    await told().toContain("diameter: worked out by the sheet");
    expect(await pane.page.locator("#this-cell").innerText()).toContain("its answer stands in the cell");
  });

  it("tells every call of a longer formula", async () => {
    await chosen("G2");
    await told().toContain("length: 2 cells, the first 20 feet");
    expect(await pane.page.locator("#this-cell h3").allInnerTexts()).toEqual(["SMALIAN", "EMC"]);
    expect(await pane.page.locator("#this-cell").innerText()).toContain("humidity 65 percent");
  });

  it("says of a date that it may have been a size, and how it is mended", async () => {
    await chosen("G3");
    await told().toContain("format the cell as Text, then type it again");
    for (const address of ["G4", "G5", "G6"]) {
      await chosen(address);
      await told().toContain("asks Bole nothing");
    }
  });

  it("is followed when another is chosen", async () => {
    await chosen("G5");
    await choose(pane.page, "D3");
    await pane.page.evaluate(() => (window as unknown as { standIn: { listener?: () => void } }).standIn.listener?.());
    await told().toContain("Logs!D3");
  });
});
