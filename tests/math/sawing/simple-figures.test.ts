import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sawPowerHp } from "../../../src/math/mill/power";
import { cutWidthIn } from "../../../src/math/sawing/cut-width";
import { headHeights } from "../../../src/math/sawing/head-heights";
import { kerfLossShare } from "../../../src/math/sawing/kerf-loss";
import { pieceCount } from "../../../src/math/sawing/piece-count";
import { cutYield } from "../../../src/math/sawing/cut-plan/plan-cut";
import { lumberRecovery } from "../../../src/math/sawing/recovery";
import { sawMinutes } from "../../../src/math/sawing/saw-time";
import { biggestLogIn, throatFitIn } from "../../../src/math/sawing/throat-fit";

const SEED = { seed: 20260101 };

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

describe("width of a cut", () => {
  it("is the chord of Machinery's Handbook 31, page 79: 59.86 in for a radius of 60 in at a height of 8 in", () => {
    // The handbook cuts 59.8665 off rather than rounding it, so the tolerance is one of its last digits.
    expect(Math.abs(cutWidthIn({ diameterIn: 120, depthIn: 8 }) - 59.86)).toBeLessThan(0.01);
  });

  it("is the whole diameter in the middle and nothing at top and bottom", () => {
    expect(cutWidthIn({ diameterIn: 20, depthIn: 10 })).toBe(20);
    expect(cutWidthIn({ diameterIn: 20, depthIn: 0 })).toBe(0);
    expect(cutWidthIn({ diameterIn: 20, depthIn: 20 })).toBe(0);
    expect(() => cutWidthIn({ diameterIn: 20, depthIn: 20.01 })).toThrow("wanted 0 to 20, got 20.01");
    expect(() => cutWidthIn({ diameterIn: 0, depthIn: 0 })).toThrow("diameter (in)");
  });
});

describe("pieces from a depth", () => {
  it("need no kerf under the last", () => {
    expect(pieceCount({ depthIn: 4 * 1.125 + 3 * 0.125, thicknessIn: 1.125, kerfIn: 0.125 })).toBe(4);
    expect(pieceCount({ depthIn: 4.87, thicknessIn: 1.125, kerfIn: 0.125 })).toBe(3);
    expect(pieceCount({ depthIn: 1, thicknessIn: 1.125, kerfIn: 0.125 })).toBe(0);
  });

  it("need a depth and a thickness", () => {
    expect(() => pieceCount({ depthIn: -1, thicknessIn: 1, kerfIn: 0 })).toThrow("depth (in)");
    expect(() => pieceCount({ depthIn: 4, thicknessIn: 0, kerfIn: 0 })).toThrow("thickness (in)");
  });

  it("fill the depth no further than it goes, and waste less than one board and kerf", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4000 }),
        fc.integer({ min: 4, max: 300 }),
        fc.integer({ min: 0, max: 20 }),
        (d, t, k) => {
          const n = pieceCount({ depthIn: d / 32, thicknessIn: t / 32, kerfIn: k / 32 });
          expect(n === 0 || n * t + (n - 1) * k <= d).toBe(true);
          expect((n + 1) * t + n * k > d).toBe(true);
        },
      ),
      SEED,
    );
  });
});

describe("minutes at the mill and recovery", () => {
  it("are plain arithmetic", () => {
    expect(sawMinutes({ cuts: 20, lengthFt: 12, feedFpm: 24, handlingMin: 1.5 })).toBe(40);
    const run = { cuts: 20, lengthFt: 12, feedFpm: 24, handlingMin: 1 };
    expect(() => sawMinutes({ ...run, cuts: -1 })).toThrow("cuts");
    expect(() => sawMinutes({ ...run, lengthFt: -1 })).toThrow("length (ft)");
    expect(() => sawMinutes({ ...run, feedFpm: 0 })).toThrow("feed");
    expect(() => sawMinutes({ ...run, handlingMin: -1 })).toThrow("handling (min a cut)");
  });

  it("count nominal board feet: 7.5 a cubic foot where 53 % of the cube was recovered (PNW-300)", () => {
    const recovered = lumberRecovery({ boardFeet: 7500, cubicFeet: 1000 });
    expect(recovered).toBe(7.5);
    // solid wood alone would be 12 x 0.53 = 6.36
    expect(recovered).toBeGreaterThan(12 * 0.53);
    expect(() => lumberRecovery({ boardFeet: 1, cubicFeet: 0 })).toThrow("cubic feet");
    expect(() => lumberRecovery({ boardFeet: -1, cubicFeet: 1 })).toThrow("board feet");
  });
});

describe("room in the mill", () => {
  it("goes by the large end of a straight log", () => {
    expect(throatFitIn({ throatIn: 40, smallIn: 16, largeIn: 20, lengthFt: 12 })).toBe(20);
    expect(throatFitIn({ throatIn: 30, smallIn: 28, largeIn: 33, lengthFt: 10 })).toBe(-3);
    expect(throatFitIn({ throatIn: 33, smallIn: 28, largeIn: 33, lengthFt: 10 })).toBe(0);
  });

  it("leaves the room asked for beside the log", () => {
    expect(throatFitIn({ throatIn: 40, smallIn: 16, largeIn: 20, lengthFt: 12, clearanceIn: 3 })).toBe(17);
  });

  it("is what a walk along the bowed log finds, inch by inch", () => {
    for (const [smallIn, largeIn, sweepIn] of [
      [16, 20, 2],
      [16, 20, 0.1],
      [20, 20, 5],
      [12, 30, 1],
    ] as const) {
      let widest = 0;
      for (let x = 0; x <= 1; x += 1 / 4096)
        widest = Math.max(widest, 4 * sweepIn * x * (1 - x) + (smallIn + (largeIn - smallIn) * x) / 2 + largeIn / 2);
      expect(throatFitIn({ throatIn: 50, smallIn, largeIn, lengthFt: 12, sweepIn })).toBeCloseTo(50 - widest, 5);
    }
  });

  it("needs 21.125 in, not 22, for a 16 to 20 in log with 2 in of sweep", () => {
    expect(throatFitIn({ throatIn: 21.125, smallIn: 16, largeIn: 20, lengthFt: 12, sweepIn: 2 })).toBeCloseTo(0, 12);
  });

  it("keeps the customary foot over the biggest log, or what is asked for", () => {
    expect(biggestLogIn({ throatIn: 84 })).toBe(72);
    expect(biggestLogIn({ throatIn: 84, clearanceIn: 4 })).toBe(80);
    expect(() => biggestLogIn({ throatIn: 12 })).toThrow("wanted more than 12, got 12");
  });

  it("refuses a log the wrong way round and a sweep that is no log's", () => {
    expect(() => throatFitIn({ throatIn: 30, smallIn: 20, largeIn: 19, lengthFt: 8 })).toThrow("large end");
    expect(() => throatFitIn({ throatIn: 30, smallIn: 20, largeIn: 20, lengthFt: 8, sweepIn: 25 })).toThrow("sweep");
    const log = { throatIn: 30, smallIn: 18, largeIn: 20, lengthFt: 8 };
    expect(() => throatFitIn({ ...log, throatIn: 0 })).toThrow("opening of the mill (in)");
    expect(() => throatFitIn({ ...log, smallIn: 0 })).toThrow("small end (in)");
    expect(() => throatFitIn({ ...log, lengthFt: 0 })).toThrow("length (ft)");
    expect(() => throatFitIn({ ...log, clearanceIn: -1 })).toThrow("clearance (in)");
  });
});
