import { describe, expect, it } from "vitest";
import { argumentPieces, arrayPieces, literal } from "../../src/formula/literals";

describe("the literals of a formula", () => {
  it("are its arguments, whatever quotes and braces hold", () => {
    expect(argumentPieces('=BOLE.X(20, "a, b", {1,2;3,4}, , "8\'6""")')).toEqual([
      "20",
      '"a, b"',
      "{1,2;3,4}",
      "",
      '"8\'6"""',
    ]);
    expect(argumentPieces("=BOLE.VERSION()")).toEqual([]);
  });
  it("of an array constant stay whole, separators and braces in quotes included", () => {
    expect(arrayPieces('{"a, b; c}", 1; "5/4","8\'6"""}')).toEqual([
      ['"a, b; c}"', "1"],
      ['"5/4"', '"8\'6"""'],
    ]);
  });
  it.each([
    ["1.50", 1.5],
    ["-2e1", -20],
    ["true", true],
    ['"8\'6"""', "8'6\""],
    ["oak", undefined],
    ['"a"b"', undefined],
  ])("%s is %j", (piece, value) => expect(literal(piece)).toBe(value));
});
