import { describe, expect, it } from "vitest";
import { formulaOf, typed } from "../../../src/hosts/pane/typed";

describe("what a person types for an argument", () => {
  it.each([
    ["20", 20, "20"],
    ["1.125", 1.125, "1.125"],
    ["-4", -4, "-4"],
    [".5", 0.5, ".5"],
    ["TRUE", true, "TRUE"],
    ["Doyle", "Doyle", '"Doyle"'],
    ["1 1/8", "1 1/8", '"1 1/8"'],
    ["8'6\"", "8'6\"", '"8\'6"""'],
    ['"12"', "12", '"12"'],
    ["12%", "12%", '"12%"'],
    ["36 cm", "36 cm", '"36 cm"'],
    ["4Q", "4Q", '"4Q"'],
    ["Oak, white", "Oak, white", '"Oak, white"'],
    [" red oak ", "red oak", '"red oak"'],
  ])("%j is the value %j and stands in the formula as %s", (text, value, piece) => {
    expect(typed(text)).toEqual({ kind: "value", piece, cells: [[value]] });
  });

  it("may be an array constant", () => {
    expect(typed('{1,"a, b";2.5,TRUE}')).toMatchObject({
      kind: "value",
      cells: [
        [1, "a, b"],
        [2.5, true],
      ],
    });
  });

  it.each(["A2", "$B$2:B40", "Logs!B2", "'Big logs'!C3:C9", "'Sam''s'!A1"])("%s is cells of the workbook", (text) => {
    expect(typed(text)).toEqual({ kind: "reference", piece: text });
  });

  it.each(["D2#", "A:A", "Logs[Dia]", "Logs[[#This Row],[Dia]]"])("%s is for Excel to work out", (text) => {
    expect(typed(text)).toEqual({ kind: "expression", piece: text });
  });

  it("may be a calculation behind an equals sign", () => {
    expect(typed("=B2/2")).toEqual({ kind: "expression", piece: "B2/2" });
  });
});

describe("the formula", () => {
  const of = (...texts: string[]) => formulaOf("LOGSCALE", texts.map(typed));

  it("drops arguments left out at the end and keeps the place of one left out before another", () => {
    expect(of("20", "12", "", "")).toBe("=BOLE.LOGSCALE(20, 12)");
    expect(of("20", "12", "", "table")).toBe('=BOLE.LOGSCALE(20, 12, , "table")');
    expect(of("", "")).toBe("=BOLE.LOGSCALE()");
  });
});
