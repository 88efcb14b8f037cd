import { describe, expect, it } from "vitest";
import { slingLegLb } from "../../../src/math/haul/sling";
import { rowsOf } from "../../csv";

describe("a sling", () => {
  const printed = rowsOf("mill/sling_factors.csv");

  it("is checked against all 13 angles of the table", () => expect(printed).toHaveLength(13));

  it.each(printed)("at $deg_from_horizontal degrees pulls $tension_factor in a leg for each pound it lifts", (row) => {
    const factor = slingLegLb({ weightLb: 2, angleDegrees: Number(row["deg_from_horizontal"]) });
    // The table inverts its own sine, rounded to three digits: 1 / 0.643 is printed 1.555 where 1.5557 is meant.
    expect(Math.abs(factor - Number(row["tension_factor"]))).toBeLessThanOrEqual(0.0015);
    expect(Math.abs(1 / factor - Number(row["reduction_factor"]))).toBeLessThanOrEqual(0.0005 + 1e-9);
  });

  it("takes angles from 30 to 90 degrees from the horizontal, and none flatter or steeper", () => {
    expect(slingLegLb({ weightLb: 2000, angleDegrees: 30 })).toBeCloseTo(2000, 9);
    expect(slingLegLb({ weightLb: 2000, angleDegrees: 90 })).toBeCloseTo(1000, 9);
    for (const angleDegrees of [0, 29.99, 90.01, 180])
      expect(() => slingLegLb({ weightLb: 2000, angleDegrees })).toThrow(`wanted 30 to 90, got ${angleDegrees}`);
  });

  it("of three or four legs counts two, unless all are sure to share", () => {
    const two = slingLegLb({ weightLb: 4000, angleDegrees: 60, legs: 2 });
    expect(slingLegLb({ weightLb: 4000, angleDegrees: 60, legs: 3 })).toBe(two);
    expect(slingLegLb({ weightLb: 4000, angleDegrees: 60, legs: 4 })).toBe(two);
    expect(slingLegLb({ weightLb: 4000, angleDegrees: 60, legs: 4, shared: true })).toBeCloseTo(two / 2, 9);
  });

  it("of one leg hangs plumb and carries the whole weight", () => {
    expect(slingLegLb({ weightLb: 2000, angleDegrees: 90, legs: 1 })).toBe(2000);
    expect(() => slingLegLb({ weightLb: 2000, angleDegrees: 60, legs: 1 })).toThrow(
      "wanted 90, for it hangs plumb, got 60",
    );
  });

  it("has one to four legs", () => {
    expect(() => slingLegLb({ weightLb: 2000, angleDegrees: 60, legs: 5 })).toThrow("sling legs: wanted 1 to 4, got 5");
    expect(() => slingLegLb({ weightLb: 2000, angleDegrees: 60, legs: 0 })).toThrow("sling legs: wanted 1 to 4, got 0");
  });
});
