import { describe, expect, it } from "vitest";
import { kilnSteps } from "../../../src/math/drying/kiln-steps";
import { NoAnswer } from "../../../src/math/errors";
import { rowsOf } from "../../csv";

describe("the kiln schedule of Oregon white oak", () => {
  it("has the stages of the source", () => {
    const rows = rowsOf("wood/oregon_white_oak_kiln.csv");
    const steps = kilnSteps({ species: "Oregon white oak", thicknessIn: 1 });
    expect(steps.length).toBe(rows.length);
    rows.forEach((row, i) => {
      const { untilPercent: until, dryBulbF: dryBulb, wetBulbF: wetBulb } = steps[i]!;
      expect(until).toBe(row["until_mc_pct"] ? Number(row["until_mc_pct"]) : undefined);
      expect(dryBulb).toBe(Number(row["dry_bulb_F"]));
      expect(Number(dryBulb) - Number(wetBulb)).toBe(Number(row["wet_bulb_depression_F"]));
    });
  });

  it("is the only one, and for 4/4 boards only", () => {
    expect(() => kilnSteps({ species: "white oak", thicknessIn: 1 })).toThrow(/Oregon white oak only, got white oak/);
    expect(kilnSteps({ species: "Oregon white oak", thicknessIn: 1.125 }).length).toBe(4);
    expect(() => kilnSteps({ species: "Oregon white oak", thicknessIn: 1.25 })).toThrow(NoAnswer);
    expect(() => kilnSteps({ species: "Oregon white oak", thicknessIn: 0.4 })).toThrow(NoAnswer);
  });
});
