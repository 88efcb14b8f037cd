import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tiedownCount } from "../../../src/math/haul/tiedowns";

const STRONG = 1e6;

describe("tie-downs", () => {
  it.each([
    [5, 1100, 1],
    [5, 1101, 2],
    [5.01, 1100, 2],
    [8, 500, 2],
    [10, 500, 2],
    [10.01, 500, 3],
    [20, 500, 3],
    [20.01, 500, 4],
    [22, 500, 4],
    [30, 500, 4],
    [30.01, 500, 5],
  ])("of a load %s ft long and %s lb are %s by its length (49 CFR 393.110)", (lengthFt, weightLb, count) => {
    expect(tiedownCount({ lengthFt, weightLb, limitLb: STRONG })).toBe(count);
  });

  it.each([
    [9900, 3300, 2],
    [13200, 3300, 2],
    [13201, 3300, 3],
    [19800, 3300, 3],
    [19801, 3300, 4],
  ])("of %s lb with a limit of %s lb each are %s by half the weight (49 CFR 393.106)", (weightLb, limitLb, count) => {
    expect(tiedownCount({ lengthFt: 10, weightLb, limitLb })).toBe(count);
  });

  it("hold at least half the weight, and one less of them would not do", () => {
    const weight = fc.double({ min: 50, max: 80000, noNaN: true });
    const length = fc.double({ min: 1, max: 60, noNaN: true });
    const limit = fc.double({ min: 300, max: 20000, noNaN: true });
    fc.assert(
      fc.property(weight, length, limit, (weightLb, lengthFt, limitLb) => {
        const count = tiedownCount({ weightLb, lengthFt, limitLb });
        const byLength = tiedownCount({ weightLb, lengthFt, limitLb: STRONG });
        expect(count).toBeGreaterThanOrEqual(byLength);
        expect(count * limitLb).toBeGreaterThanOrEqual((weightLb / 2) * (1 - 1e-8));
        if (count > byLength) expect((count - 1) * limitLb).toBeLessThan(weightLb / 2);
      }),
      { seed: 393, numRuns: 500 },
    );
  });

  it("of no strength do not hold", () => {
    expect(() => tiedownCount({ lengthFt: 10, weightLb: 500, limitLb: 0 })).toThrow(
      "working load limit of one tie-down (lb)",
    );
  });
});
