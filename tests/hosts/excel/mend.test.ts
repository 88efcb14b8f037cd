import { describe, expect, it } from "vitest";
import { paneBeside } from "./open-pane";
import { said } from "./pane-page";
import { contents, standIn } from "./stand-in";

const dead = (formula: string) => ({ value: "#NAME?", formula });

const BOOK = {
  active: "Logs",
  chosen: "A1",
  sheets: {
    Logs: {
      cells: {
        A1: dead("=BOLE.LOGSCALE(20, 12)"),
        A2: { value: 136, formula: '=BOLE.LOGSCALE(20, 8.5, "Doyle")' },
        A3: dead("=IF(B3=1, bole.emc(70, 40), 0)"),
        A4: dead("=SUMM(A1:A2)"),
        A5: { value: "#NAME?" },
      },
    },
    Locked: { cells: { C3: dead("=BOLE.EMC(70, 40)") }, protected: true },
    Clean: { cells: { A1: { value: 1 } } },
    Empty: { cells: {} },
  },
};

const pane = paneBeside(BOOK, "Formulas");
const says = () => expect.poll(() => said(pane.page));

async function enterAnew() {
  await pane.page.getByText("Cells show #NAME?").click();
  await pane.page.getByRole("button", { name: "Enter them anew" }).click();
}

describe("formulas that show #NAME? because they were typed before Bole was loaded", () => {
  it("are entered anew on all sheets, counted, and a protected sheet is named and left", async () => {
    await enterAnew();
    await says().toBe(
      "2 formulas that showed #NAME? were entered anew. Protected, and left as it is: Locked. Unprotect, then try again",
    );
    expect(await contents(pane.page, "Logs")).toEqual({
      A1: "=BOLE.LOGSCALE(20, 12)",
      A2: '=BOLE.LOGSCALE(20, 8.5, "Doyle")',
      A3: "=IF(B3=1, bole.emc(70, 40), 0)",
      A4: "=SUMM(A1:A2)",
      A5: "#NAME?",
    });
    const { sheets } = await pane.page.evaluate(
      () =>
        (window as unknown as { standIn: { sheets: Record<string, { cells: Record<string, { value: unknown }> }> } })
          .standIn,
    );
    // The stand-in gives an entered formula the value 0; what was not entered keeps the value it had.
    expect([sheets.Logs!.cells.A1!.value, sheets.Logs!.cells.A3!.value]).toEqual([0, 0]);
    expect([sheets.Logs!.cells.A2!.value, sheets.Logs!.cells.A4!.value]).toEqual([136, "#NAME?"]);
    expect(sheets.Locked!.cells.C3!.value).toBe("#NAME?");
  });

  it("are none in a workbook without them, and it says so", async () => {
    await standIn(pane.page, { ...BOOK, sheets: { Logs: { cells: { A1: { value: 1 } } } } });
    await enterAnew();
    await says().toBe("No formula of Bole shows #NAME?");
  });
});

describe("what the last calls were refused for", () => {
  it("stands in the pane, where Excel shows no message beside the cell", async () => {
    await pane.page.evaluate(() => {
      const { mappings } = (
        CustomFunctions as unknown as { _association: { mappings: Record<string, (...cells: unknown[]) => unknown> } }
      )._association;
      try {
        mappings["CUTWIDTH"]!([[20]], [[21]]);
      } catch {
        // Excel shows what is thrown; the pane must know it all the same.
      }
    });
    await pane.page.getByText("A cell shows #VALUE! or #N/A").click();
    await expect
      .poll(() => pane.page.locator(".refusals li").first().textContent())
      .toMatch(/^CUTWIDTH\(20, 21\) #N\/A: depth/);
  });
});
