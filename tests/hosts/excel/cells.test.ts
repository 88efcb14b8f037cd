import { OfficeMockObject } from "office-addin-mock";
import { afterEach, describe, expect, it, vi } from "vitest";
import { cellsAt, chosenAddress, putIntoChosenCell } from "../../../src/hosts/excel/workbook/cells";

/*
 * Microsoft's own mock of the object model: whatever is read before it was loaded and synced reads as a sentence that
 * says so, and loading what is not there throws.
 */
function excelWith(cell: { address: string; formulas: unknown[][]; values: unknown[][] }) {
  const sheet = { range: cell, getRange: (): unknown => mock.context.workbook.worksheets.sheet.range };
  const mock = new OfficeMockObject({
    context: {
      workbook: {
        range: { ...cell, getCell: (): unknown => mock.context.workbook.range },
        getSelectedRange: (): unknown => mock.context.workbook.range,
        worksheets: {
          sheet,
          getActiveWorksheet: (): unknown => mock.context.workbook.worksheets.sheet,
          getItem: (): unknown => mock.context.workbook.worksheets.sheet,
        },
      },
    },
    run: (work: (context: unknown) => Promise<unknown>) => work(mock.context),
  }) as unknown as {
    context: { workbook: { range: { formulas: unknown[][] }; worksheets: { sheet: { range: unknown } } } };
  };
  vi.stubGlobal("Excel", mock);
  return mock;
}

afterEach(() => vi.unstubAllGlobals());

describe("beside Microsoft's mock of Excel", () => {
  it("the chosen cell takes a formula, and its address was loaded before it is told", async () => {
    const mock = excelWith({ address: "'Big logs'!B2", formulas: [[""]], values: [[""]] });
    expect(await putIntoChosenCell((sheet) => `=BOLE.EMC(${sheet}A1, 50)`)).toBe(
      "'Big logs'!B2 now holds =BOLE.EMC('Big logs'!A1, 50)",
    );
    expect(mock.context.workbook.range.formulas).toEqual([["=BOLE.EMC('Big logs'!A1, 50)"]]);
  });

  it("a cell that holds something keeps it", async () => {
    const mock = excelWith({ address: "Logs!B2", formulas: [["=A1"]], values: [[5]] });
    await expect(putIntoChosenCell(() => "=1")).rejects.toThrow("Logs!B2 already holds =A1. Choose an empty cell");
    expect(mock.context.workbook.range.formulas).toEqual([["=A1"]]);
  });

  it("addresses and values are loaded before they are read", async () => {
    excelWith({ address: "Logs!A1:A2", formulas: [[""], [""]], values: [[20], ["8-6"]] });
    expect(await chosenAddress()).toBe("Logs!A1:A2");
    expect(await cellsAt("Logs!A1:A2")).toEqual([[20], ["8-6"]]);
    expect(await cellsAt("A1:A2")).toEqual([[20], ["8-6"]]);
  });
});
