import { describe, expect, it } from "vitest";
import { headHeights } from "../../../src/math/sawing/head-heights";

describe("head heights", () => {
  it("drop by one board and one kerf, and stop above the bed", () => {
    const passes = headHeights({ startIn: 10, thicknessIn: 1.125, kerfIn: 0.125, count: 20 });
    expect(passes.map(({ bladeHeightIn }) => bladeHeightIn)).toEqual([10, 8.75, 7.5, 6.25, 5, 3.75, 2.5, 1.25, 0]);
  });

  it("keep a decimal kerf's last cut on the bed line", () => {
    // 10 drops of 1.1 from 11 end at 0, which binary fractions miss by a hair
    expect(headHeights({ startIn: 11, thicknessIn: 1, kerfIn: 0.1, count: 50 })).toHaveLength(11);
  });

  it("stop at the count asked for, or at the lowest setting", () => {
    expect(headHeights({ startIn: 10, thicknessIn: 1.125, kerfIn: 0.125, count: 3 })).toHaveLength(4);
    expect(headHeights({ startIn: 10, thicknessIn: 1.125, kerfIn: 0.125, count: 30, bedIn: 9 })).toHaveLength(1);
    expect(() => headHeights({ startIn: 8.9, thicknessIn: 1, kerfIn: 0.1, count: 1, bedIn: 9 })).toThrow(
      "wanted 9 or more",
    );
    expect(() => headHeights({ startIn: 10, thicknessIn: 0, kerfIn: 0.125, count: 3 })).toThrow("thickness (in)");
  });
});
