import { describe, expect, it } from "vitest";
import { kerfLossShare } from "../../../src/math/sawing/kerf-loss";

describe("kerf loss", () => {
  it("loses nothing with no kerf, and a tenth with 1/8 in on 1 1/8 in", () => {
    expect(kerfLossShare({ thicknessIn: 1.125, kerfIn: 0 })).toBe(0);
    expect(kerfLossShare({ thicknessIn: 1.125, kerfIn: 0.125 })).toBe(0.1);
  });

  it("refuses a kerf below 0 and a board of no thickness", () => {
    expect(() => kerfLossShare({ thicknessIn: 1, kerfIn: -0.01 })).toThrow("kerf (in): wanted 0 to 0.75, got -0.01");
    expect(() => kerfLossShare({ thicknessIn: 0, kerfIn: 0.1 })).toThrow("thickness (in): wanted more than 0");
  });
});
