import { describe, expect, it } from "vitest";
import { CUTYIELD, KERFGAIN, PIECECOUNT, SAWTIME, THROATFIT } from "../../../src/functions/sawing";
import { column, one, refused } from "../sheet";

describe("columns of logs", () => {
  it("spill, each log its own answer, a bad one its own error, an unfilled row 0", () => {
    const logs = column(12.5, 0, "wide", 30);
    const answers = CUTYIELD(logs, column(10, 0, 10, 10), one("4/4"), one(0.125), one("cant"), [
      ["cant widths", "6, 8"],
    ]);
    expect(answers[0]![0]).toBeCloseTo(68.1666667, 6);
    expect(answers[1]).toEqual([0]);
    expect(answers[2]).toEqual([refused("#VALUE!", /diameter/)]);
    expect(answers[3]![0] as number).toBeGreaterThan(400);
  });

  it("miss a length by name, and a kerf that every row lacks", () => {
    expect(CUTYIELD(column(12, 14), column(8, 0), one("4/4"), one(0.125))[1]).toEqual([refused("#VALUE!", /length/)]);
    expect(CUTYIELD(column(12, 0), column(8, 0), one("4/4"), one(0))).toEqual([[refused("#VALUE!", /kerf/)], [0]]);
  });

  it("take one opening, feed or pair of kerfs for all logs, and answer 0 beside an unfilled one", () => {
    expect(THROATFIT(one(40), column(16, 0), column(20, 0), column(12, 0))).toEqual([[20], [0]]);
    expect(SAWTIME(column(20, 0), column(12, 0), one(24), one(1.5))).toEqual([[40], [0]]);
    expect(PIECECOUNT(column(8, null), one(1.125), one(0.125))).toEqual([[6], [0]]);
    expect(KERFGAIN(column(20, null), column(12, null), one("4/4"), one(0.25), one(0.125))).toEqual([[19], [0]]);
  });

  it("give metric and inch logs the same plan", () => {
    const metric = CUTYIELD(one("50.8 cm"), one("3048 mm"), one("4/4"), one("3.175 mm"));
    expect(metric).toEqual(CUTYIELD(one(20), one(10), one("4/4"), one("1/8")));
  });
});
