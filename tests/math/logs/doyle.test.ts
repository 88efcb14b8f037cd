import { describe, expect, it } from "vitest";
import { doyleBoardFeet, doyleTableBoardFeet } from "../../../src/math/logs/doyle";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";
import { cellsOf, expectSaid, missesOf } from "./printed-cells";

const checked = printedValuesOf("Doyle");

describe("Doyle", () => {
  it("gives every cell of the modern printed table, exact halves up", () => {
    const cells = cellsOf("logs/doyle_even_inch_modern.csv", "bf");
    checked(cells.length);
    expect(missesOf(cells, (diameterIn, lengthFt) => doyleTableBoardFeet({ diameterIn, lengthFt }))).toEqual({});
    expectSaid("doyle.ts", `${cells.length} of ${cells.length} cells of the modern Doyle table`);
  });

  /** Chase as read, where it is not within half a board foot of the rule: read wrong by the scanner, or misprinted. */
  const CHASE_IS_OFF: Record<string, string> = {
    "10 x 32": "73 for 72: the two neighbors step by 4.5, this one by 5; misprint or misread",
    "11 x 24": "71 for 73.5: a 4 read as 1, or misprint",
    "19 x 28": "391 for 393.75: a 4 read as 1",
    "22 x 32": "618 for 648: a 4 read as 1",
    "30 x 36": "1531 for 1521: misprint or misread",
    "31 x 22": "1003 for 1002.375: rounded up by mistake",
    "34 x 36": "3025 for 2025: a 2 read as 3",
    "35 x 26": "1563 for 1561.625: misprint",
    "35 x 34": "2012 for 2042.125: a 4 read as 1",
  };

  it("gives every readable cell of Chase 1913, exact halves up or down, but for nine misprints or misreadings", () => {
    const rows = rowsOf("logs/doyle_chase1913.csv");
    expect(rows.filter(({ flag }) => flag === "UNREADABLE_OCR")).toHaveLength(
      rows.filter(({ bf }) => bf === "").length,
    );
    const cells = cellsOf("logs/doyle_chase1913.csv", "bf");
    const off = cells.filter(({ diameter, length, printed }) => {
      const exact = doyleBoardFeet({ diameterIn: diameter, lengthFt: length });
      return Math.abs(printed - exact) > 0.5;
    });
    checked(cells.length);
    expect(off.map(({ at }) => at)).toEqual(Object.keys(CHASE_IS_OFF));
    expectSaid("doyle.ts", `${cells.length - off.length} of ${cells.length} readable cells of Chase 1913`);
  });

  it("adds up a small load as a printed lesson does, 790 rounded by its author", () => {
    // E. Wengert, Value-Added Processing, 2001: five logs 16 in by 16 ft and one 16 in by 8 ft; the rule gives 792
    checked();
    const load = 5 * doyleBoardFeet({ diameterIn: 16, lengthFt: 16 }) + doyleBoardFeet({ diameterIn: 16, lengthFt: 8 });
    expect(load).toBe(792);
    expect(Math.round(load / 10) * 10).toBe(790);
  });
});
