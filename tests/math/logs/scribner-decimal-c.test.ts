import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { scribnerBoardFeet } from "../../../src/math/logs/scribner";
import { scribnerDecimalCBoardFeet } from "../../../src/math/logs/scribner-decimal-c";
import { printedValuesOf } from "../../printed";
import { cellsOf, expectSaid, missesOf } from "./printed-cells";

const checked = printedValuesOf("Scribner Decimal C");

describe("Scribner Decimal C", () => {
  const cells = cellsOf("logs/scribner_decimal_c_wengert2001.csv", "bf");

  it("gives every cell of Wengert's table", () => {
    checked(cells.length);
    expect(missesOf(cells, (diameterIn, lengthFt) => scribnerDecimalCBoardFeet({ diameterIn, lengthFt }))).toEqual({});
    expectSaid(
      "scribner-decimal-c.ts",
      `${cells.length} of ${cells.length} cells of Wengert's Scribner Decimal C table`,
    );
  });

  it("agrees with the Forest Service's 6 in by 8 ft, and differs on 7 in by 8 ft and 30 in by 16 ft", () => {
    // Bailey 1911: 6- and 8-ft logs of 6 and 7 in are 0.5 (5 bf); a 30-inch 16-foot log is 66 (660 bf)
    checked(3);
    expect(scribnerDecimalCBoardFeet({ diameterIn: 6, lengthFt: 8 })).toBe(5);
    expect(scribnerDecimalCBoardFeet({ diameterIn: 7, lengthFt: 8 })).toBe(10); // Bailey: 5; another edition
    expect(() => scribnerDecimalCBoardFeet({ diameterIn: 30, lengthFt: 16 })).toThrow(NoAnswer); // one lone cell of a table not seen
    expect(scribnerBoardFeet({ diameterIn: 30, lengthFt: 16 })).toBe(647); // and the formula does not give the 660
  });

  it("is within one unit of the formula, which is no substitute: 32 of 90 cells are a unit off", () => {
    const off = cells.filter(({ diameter, length, printed }) => {
      const formula = scribnerBoardFeet({ diameterIn: diameter, lengthFt: length });
      expect(Math.abs(printed - formula)).toBeLessThan(15);
      return Math.floor(formula / 10 + 0.5) * 10 !== printed;
    });
    expectSaid(
      "scribner.ts",
      `${cells.length - off.length} of ${cells.length} cells of Wengert's Scribner Decimal C table`,
    );
  });
});
