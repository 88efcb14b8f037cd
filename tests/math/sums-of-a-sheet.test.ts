import { describe, expect, it } from "vitest";
import { moisturePercent } from "../../src/math/drying/moisture";
import { NoAnswer } from "../../src/math/errors";
import { newtonVolume, smalianFt3 } from "../../src/math/logs/cubic";
import { cullRingBoardFeet, cullSectorBoardFeet, cullSweepBoardFeet } from "../../src/math/logs/cull";
import { netScaleBoardFeet } from "../../src/math/logs/net-scale";
import { diameterAtIn } from "../../src/math/logs/scaling-diameter";
import { breakEvenFeet } from "../../src/math/money/break-even-feet";
import { driedBoardFeet } from "../../src/math/money/dried-tally";
import { listPrice } from "../../src/math/money/price-and-margin";
import { waterToLoseLb } from "../../src/math/wood/weight";

/* A sheet keeps sums in binary and shows 15 digits: both of these show as the round number, and neither is it. */
const UNDER_14_3 = 14.1 + 0.2;
const OVER_3_3 = 1.1 + 2.2;
const OVER_THREE_TENTHS = 0.1 + 0.2;

describe("a sum that misses its number by the last binary digit", () => {
  it("is not what it shows", () => {
    expect(UNDER_14_3).toBeLessThan(14.3);
    expect(OVER_3_3).toBeGreaterThan(3.3);
    expect(OVER_THREE_TENTHS).toBeGreaterThan(0.3);
  });

  it("as the butt of a cylinder is not thinner than the top", () => {
    const log = { smallIn: 14.3, largeIn: UNDER_14_3, lengthFt: 10 };
    expect(smalianFt3(log)).toBeCloseTo((Math.PI / 4 / 144) * 14.3 ** 2 * 10, 9);
    expect(newtonVolume({ ...log, middleIn: UNDER_14_3 })).toBeCloseTo(smalianFt3(log), 9);
    expect(() => smalianFt3({ ...log, largeIn: 14.2999 })).toThrow("large-end diameter (in), not under the small end");
  });

  it("as a place on the log is still on it", () => {
    const log = { smallIn: 16, largeIn: 20, lengthFt: 3.3 };
    expect(diameterAtIn({ ...log, distanceFt: OVER_3_3 })).toBeCloseTo(20, 9);
    expect(() => diameterAtIn({ ...log, distanceFt: 3.3001 })).toThrow(NoAnswer);
  });

  it("as a defect is not longer, a core not thicker and a sweep not wider than its log", () => {
    const log = { diameterIn: 20, lengthFt: 3.3, rule: "Doyle" } as const; // 52.8 bf
    expect(cullSectorBoardFeet({ ...log, sharePercent: 50, defectLengthFt: OVER_3_3 })).toBe(26);
    expect(cullRingBoardFeet({ outerIn: 14.3, coreIn: 14.3 + 2e-15, lengthFt: 8, rule: "Doyle" })).toBe(0);
    expect(cullSweepBoardFeet({ ...log, diameterIn: 4.5, sweepIn: 5.5 + 1e-15 })).toBeGreaterThanOrEqual(0);
  });

  it("as all the deductions of a log leaves nothing, and not less", () => {
    expect(netScaleBoardFeet({ grossBf: 3.3, deductions: [1.1, 2.2] })).toBe(0);
    expect(() => netScaleBoardFeet({ grossBf: 3.3, deductions: [1.1, 2.21] })).toThrow("wanted 0 to 3.3");
  });

  it("as a weight that lost nothing in the oven is oven dry", () => {
    expect(moisturePercent({ wetLb: UNDER_14_3, dryLb: 14.3 })).toBe(0);
    expect(waterToLoseLb({ species: "white oak", boardFeet: 100, fromPercent: UNDER_14_3, toPercent: 14.3 })).toBe(0);
  });

  it("as a price that only covers its cost breaks even at no amount, rather than at 10^20 feet", () => {
    expect(() => breakEvenFeet({ fixedCost: 12_000, pricePerFoot: OVER_THREE_TENTHS, variablePerFoot: 0.3 })).toThrow(
      "every foot loses money",
    );
  });
});

describe("a share taken from a whole", () => {
  it("leaves the round number where there is one, so that a sheet's INT does not lose a foot", () => {
    expect(driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 7 })).toBe(930);
    expect(listPrice({ cost: 6, marginPercent: 99 })).toBe(600);
  });
});
