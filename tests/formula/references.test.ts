import { describe, expect, it } from "vitest";
import { rangeOf } from "../../src/formula/addresses";
import { pointsOutside, referencesOf } from "../../src/formula/references";

describe("what a formula points at", () => {
  it.each([
    ["=A1+Logs!$B$2:$C$3", ["Here!A1", "Logs!B2:C3"]],
    ["='Log book'!A1+'it''s'!B2&\"C3\"", ["Log book!A1", "it's!B2"]],
    ["=LOG10(5)+BOLE.EMC(A1,2)+B3:A2", ["Here!A1", "Here!A2:B3"]],
    ["=SUM(A:B)", ["Here!A1:B1048576"]],
    ["=SUM(2:3)", ["Here!A2:XFD3"]],
  ])("%s", (formula, expected) => {
    expect(referencesOf(formula, "Here").map(({ sheet, block }) => `${sheet}!${rangeOf(block)}`)).toEqual(expected);
  });
  it.each([
    ["=[1]Sheet1!A1", "another workbook"],
    ["='[2]My sheet'!A1", "another workbook"],
    ["=[1]!Rate", "another workbook"],
    ["=SUM(Jan:Dec!A1)", "several sheets at once"],
    ["=SUM('Jan 1:Dec 1'!A1)", "several sheets at once"],
    ["=SUM(Logs[2024])", undefined],
    ["=SUM(A1:B2)", undefined],
  ])("%s points at %s", (formula, outside) => expect(pointsOutside(formula)).toBe(outside));
});
