import { describe, expect, it } from "vitest";
import { withoutNames } from "../../src/formula/names";

describe("names", () => {
  const names = [
    { name: "Rule", refersTo: "'Log book'!$D$4" },
    { name: "Rate", refersTo: "Mill!$B$2", sheet: 1 },
    { name: "Rate", refersTo: "Mill!$B$1" },
    { name: "Twice", refersTo: "Rate*2" },
    { name: "Self", refersTo: "Self+1" },
  ];
  const sheets = ["Logs", "Prices"];
  it.each([
    [0, "SCALE(A1,rule)", "SCALE(A1,'Log book'!$D$4)"],
    [0, "Rate+1", "Mill!$B$1+1"],
    [1, "Rate+1", "Mill!$B$2+1"],
    [0, "Prices!Rate+1", "Mill!$B$2+1"],
    [0, "Twice", "(Mill!$B$1*2)"],
    [0, '"Rule"&Logs[Rule]&Rule.two&_xlpm.Rate', '"Rule"&Logs[Rule]&Rule.two&_xlpm.Rate'],
    [0, "Self", "Self"],
  ])("on sheet %i %s stands for %s", (sheet, formula, meant) => {
    expect(withoutNames(names, sheets)(formula, sheet)).toBe(meant);
  });
});
