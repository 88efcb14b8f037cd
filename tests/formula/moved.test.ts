import { describe, expect, it } from "vitest";
import { movedFormula } from "../../src/formula/moved";

describe("a formula copied down and to the right", () => {
  it.each([
    ["A1+$A1+A$1+$A$1", "B3+$A3+B$1+$A$1"],
    ["SUM(A1:B2,C:C,$D:D,5:5,$6:6)", "SUM(B3:C4,D:D,$D:E,7:7,$6:8)"],
    ["LOG10(A1)&\"A1\"&'A1 b'!A1", "LOG10(B3)&\"A1\"&'A1 b'!B3"],
    ["Logs[A1]+Sheet1!A1*1.5", "Logs[A1]+Sheet1!B3*1.5"],
    ["_xldudf_BOLE_LOGSCALE(A1,12)+Q1_total", "_xldudf_BOLE_LOGSCALE(B3,12)+Q1_total"],
  ])("%s reads %s two rows down and one column right", (formula, moved) =>
    expect(movedFormula(formula, 2, 1)).toBe(moved),
  );
});
