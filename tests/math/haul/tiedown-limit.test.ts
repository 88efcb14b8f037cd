import { describe, expect, it } from "vitest";
import { tiedownLimitLb, type TiedownGear } from "../../../src/math/haul/tiedown-limit";
import { TIEDOWN_LIMITS, TIEDOWN_LIMITS_TOTALS } from "../../../src/math/haul/tiedown-limits.table";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";

const count = printedValuesOf("limits of unmarked tie-down gear");
const inches = (written: string) =>
  written.split(" ").reduce((sum, part) => {
    const [over, under = "1"] = part.split("/");
    return sum + Number(over) / Number(under);
  }, 0);

describe("the working load limit of gear without a mark", () => {
  it("is the law's, in every cell, by inches and by millimeters", () => {
    for (const row of rowsOf("haul/tiedown_wll_393_108.csv")) {
      const gear = row["gear"]!.replace("synthetic ", "").replace(" 6x37 fiber core", "") as TiedownGear;
      const grade = row["grade"] ? Number(row["grade"].replace("grade ", "")) : undefined;
      const limit = Number(row["wll_lb"]);
      expect(tiedownLimitLb({ gear, sizeIn: inches(row["size_in"]!), grade })).toBe(limit);
      expect(tiedownLimitLb({ gear, sizeIn: Number(row["size_mm"]) / 25.4, grade })).toBe(limit);
      count();
    }
  });

  it("adds up to the law's totals", () => {
    const total = (rows: readonly (typeof TIEDOWN_LIMITS)[number][]) => rows.reduce((sum, row) => sum + row[4], 0);
    expect(TIEDOWN_LIMITS.length).toBe(TIEDOWN_LIMITS_TOTALS.rows);
    expect(total(TIEDOWN_LIMITS.filter(([gear]) => gear === "chain"))).toBe(TIEDOWN_LIMITS_TOTALS.chainLb);
    expect(total(TIEDOWN_LIMITS)).toBe(TIEDOWN_LIMITS_TOTALS.allLb);
  });

  it("of a chain without a grade is grade 30's, and grade 80 of 5/16 in lies under grade 70, as printed", () => {
    expect(tiedownLimitLb({ gear: "chain", sizeIn: 0.375 })).toBe(2650);
    expect(tiedownLimitLb({ gear: "chain", sizeIn: 0.3125, grade: 80 })).toBe(4500);
    expect(tiedownLimitLb({ gear: "chain", sizeIn: 0.31, grade: 70 })).toBe(4700);
  });

  it("has no answer between two sizes, for a grade not printed, or for a grade of a strap", () => {
    expect(() => tiedownLimitLb({ gear: "chain", sizeIn: 0.4 })).toThrow(
      "size of chain of grade 30 (in): wanted 0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625, got 0.4",
    );
    expect(() => tiedownLimitLb({ gear: "chain", sizeIn: 0.4375, grade: 80 })).toThrow(
      /wanted 0.25, 0.3125, 0.375, 0.5/,
    );
    expect(() => tiedownLimitLb({ gear: "chain", sizeIn: 0.375, grade: 60 })).toThrow(
      "wanted 30, 43, 70, 80, 100, got 60",
    );
    expect(() => tiedownLimitLb({ gear: "webbing", sizeIn: 2, grade: 70 })).toThrow(
      "wanted none, for webbing has no grade",
    );
    expect(() => tiedownLimitLb({ gear: "wire rope", sizeIn: 1 })).toThrow(
      /^size of wire rope \(in\): wanted .*0.75, got 1/,
    );
  });
});
