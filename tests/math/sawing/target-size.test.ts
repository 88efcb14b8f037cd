import { describe, expect, it } from "vitest";
import { targetSizeIn } from "../../../src/math/sawing/target-size";
import { rowsOf } from "../../csv";

describe("target size", () => {
  it("is the critical size of EM 8731, page 12, when the saw does not stray: 1.560 + 0.030 + 0.030", () => {
    expect(targetSizeIn({ finishedIn: 1.56, planingIn: 0.06 })).toBeCloseTo(1.62, 12);
  });

  it("adds each printed factor of EM 8731, Table 2", () => {
    for (const { undersize_pct, Z } of rowsOf("sawing/undersize-factors.csv")) {
      const target = targetSizeIn({ finishedIn: 1, variationIn: 0.1, undersizePercent: Number(undersize_pct) });
      expect(target).toBeCloseTo(1 + Number(Z) / 10, 12);
    }
  });

  it("errs on the thick side of the normal curve between the printed rows", () => {
    // upper-tail quantiles of the normal curve, from any table of it: 0.1 % 3.090, 0.5 % 2.576, 7.5 % 1.440, 12.5 % 1.150
    for (const [undersizePercent, z] of [
      [0.1, 3.0899],
      [0.11, 3.0618],
      [0.5, 2.576],
      [7.5, 1.44],
      [12.5, 1.15],
    ] as const) {
      const factor = targetSizeIn({ finishedIn: 1, variationIn: 1, undersizePercent }) - 1;
      expect(factor).toBeGreaterThan(z);
      expect(factor - z).toBeLessThan(0.2);
    }
  });

  it("divides by what shrinkage leaves, so that drying gives the critical size back", () => {
    const green = targetSizeIn({ finishedIn: 1, planingIn: 0.1875, shrinkagePercent: 8 });
    expect(green * 0.92).toBeCloseTo(1.1875, 12);
  });

  it("answers at both ends of the table and not outside", () => {
    expect(targetSizeIn({ finishedIn: 1, undersizePercent: 15 })).toBe(1);
    expect(() => targetSizeIn({ finishedIn: 1, undersizePercent: 15.1 })).toThrow(
      "undersize allowed (%): wanted 0 to 15, got 15.1",
    );
    expect(() => targetSizeIn({ finishedIn: 1, undersizePercent: -1 })).toThrow("wanted 0 to 15, got -1");
    expect(targetSizeIn({ finishedIn: 1, shrinkagePercent: 20 })).toBe(1.25);
    expect(() => targetSizeIn({ finishedIn: 1, shrinkagePercent: 20.1 })).toThrow("wanted 0 to 20, got 20.1");
    expect(() => targetSizeIn({ finishedIn: 0 })).toThrow("finished size (in)");
    expect(() => targetSizeIn({ finishedIn: 1, planingIn: -1 })).toThrow("planing (in)");
    expect(() => targetSizeIn({ finishedIn: 1, variationIn: -1 })).toThrow("sawing variation (in)");
  });
});
