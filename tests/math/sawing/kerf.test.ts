import { describe, expect, it } from "vitest";
import { sawPowerHp } from "../../../src/math/mill/power";
import { headHeights } from "../../../src/math/sawing/head-heights";
import { kerfLossShare } from "../../../src/math/sawing/kerf-loss";
import { pieceCount } from "../../../src/math/sawing/piece-count";
import { cutYield } from "../../../src/math/sawing/cut-plan/plan-cut";

describe("a kerf over three quarters of an inch", () => {
  it("is millimetres without their name, or a board in the kerf's cell, and has no answer", () => {
    expect(kerfLossShare({ thicknessIn: 2.25, kerfIn: 0.75 })).toBe(0.25);
    const wide = { thicknessIn: 0.125, kerfIn: 1 };
    for (const ask of [
      () => kerfLossShare(wide),
      () => headHeights({ startIn: 10, count: 3, ...wide }),
      () => pieceCount({ depthIn: 10, ...wide }),
      () => sawPowerHp({ depthIn: 24, feedFpm: 20, energyPsi: 5000, kerfIn: 3 }),
      () => cutYield({ diameterIn: 20, lengthFt: 10, products: [{ thickness: 1 }], kerfIn: 3 }),
    ])
      expect(ask).toThrow(/^kerf \(in\): wanted 0 to 0\.75, got [13]$/);
    const ripped = { rip: true, "rip kerf": 3 };
    expect(() =>
      cutYield({ diameterIn: 20, lengthFt: 10, products: [{ thickness: 1 }], kerfIn: 0.125, settings: ripped }),
    ).toThrow("rip kerf (in): wanted 0 to 0.75, got 3");
  });
});
