import { describe, expect, it } from "vitest";
import { explain } from "../../src/engine/explain";
import { originOf, spoken, type Cells } from "../../src/engine/origin";
import { addressOf, cellAt } from "../../src/formula/addresses";

/** A workbook of a few cells: a formula each, and the error that it shows. */
function workbook(cells: Record<string, [formula: string, error?: string]>, names: Record<string, string> = {}): Cells {
  const at = ({ sheet, row, column }: { sheet: string; row: number; column: number }) =>
    cells[`${sheet}!${addressOf(row, column)}`];
  return { errorAt: (place) => at(place)?.[1], formulaAt: (place) => at(place)?.[0], named: (name) => names[name] };
}

const origin = (address: string, cells: Cells, error = "#N/A") => {
  const found = originOf({ sheet: "Log book", ...cellAt(address) }, error, cells);
  return found && spoken(found, "Log book");
};

describe("where an error comes from", () => {
  it.each<[string, Record<string, [string, string?]>, string | undefined]>([
    ["the cell itself", { "Log book!A1": ["=BOLE.LOGSCALE(3,12)", "#N/A"] }, undefined],
    ["the next cell", { "Log book!A1": ["=B1*2", "#N/A"], "Log book!B1": ["=NA()", "#N/A"] }, "B1"],
    [
      "a cell at the end of a chain",
      { "Log book!A1": ["=B1", "#N/A"], "Log book!B1": ["=$C$1+1", "#N/A"], "Log book!C1": ["=NA()", "#N/A"] },
      "C1",
    ],
    ["a range", { "Log book!A1": ["=SUM(B1:C9)", "#N/A"], "Log book!C7": ["=NA()", "#N/A"] }, "C7"],
    ["another sheet", { "Log book!A1": ["='Cut plan'!B2", "#N/A"], "Cut plan!B2": ["=NA()", "#N/A"] }, "Cut plan, B2"],
    ["a sheet without quotes", { "Log book!A1": ["=Mill!B2", "#N/A"], "Mill!B2": ["=NA()", "#N/A"] }, "Mill, B2"],
    ["a name", { "Log book!A1": ["=Band_speed*2", "#N/A"], "Mill!C4": ["=NA()", "#N/A"] }, "Mill, C4"],
    ["a cell with another error", { "Log book!A1": ["=B1", "#N/A"], "Log book!B1": ["=1/0", "#DIV/0!"] }, undefined],
    ["text that looks like a cell", { "Log book!A1": ['="B1"', "#N/A"], "Log book!B1": ["=NA()", "#N/A"] }, undefined],
    ["a circle", { "Log book!A1": ["=B1", "#N/A"], "Log book!B1": ["=B1", "#N/A"] }, "B1"],
  ])("%s", (_, cells, expected) => {
    expect(origin("A1", workbook(cells, { Band_speed: "Mill!$C$4" }))).toBe(expected);
  });
});

describe("a function that does not exist", () => {
  const known = ["SUM", "BOLE.CUTPLAN", "BOLE.EMC"];
  it.each([
    ["=CUTPLAN(1)", "There is no function CUTPLAN. Did you mean BOLE.CUTPLAN?"],
    ["=BOLE.CUTPLN(1)", "There is no function BOLE.CUTPLN. Did you mean BOLE.CUTPLAN?"],
    ["=SUM(BOLE.NOTHINGLIKEIT(1))", "There is no function BOLE.NOTHINGLIKEIT."],
    ["=SUM(Logs[BF])", expect.stringContaining("understood by Excel only") as string],
    ["=SUM(F1#)", expect.stringContaining("understood by Excel only") as string],
    ['=SUM("NONE(1)",walnut)', "Not a formula, or one with a name that is not known here. Text belongs in quotes."],
  ])("%s", (formula, message) =>
    expect(explain(formula, "#NAME?", "species: the cell holds #NAME?", known)).toEqual(message),
  );
});
