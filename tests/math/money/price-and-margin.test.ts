import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { listPrice, marginShare } from "../../../src/math/money/price-and-margin";

describe("a margin", () => {
  it("is on the price: a markup of 40 % is a margin of 28.6 %", () => {
    expect(marginShare({ price: 1.4, cost: 1 })).toBeCloseTo(0.286, 3);
    expect(listPrice({ cost: 1, marginPercent: 40 })).toBeCloseTo(1.667, 3);
  });

  it("comes back from the price it made", () => {
    const cost = fc.double({ min: 0.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(cost, fc.double({ min: 0, max: 99, noNaN: true }), (cost, marginPercent) => {
        const price = listPrice({ cost, marginPercent });
        expect(marginShare({ price, cost }) * 100).toBeCloseTo(marginPercent, 8);
      }),
      { seed: 12 },
    );
  });

  it("of 100 % or more has no price, and of 0 is the cost", () => {
    expect(listPrice({ cost: 6, marginPercent: 0 })).toBe(6);
    expect(listPrice({ cost: 6, marginPercent: 99.9 })).toBeCloseTo(6000, 6);
    for (const marginPercent of [100, 150])
      expect(() => listPrice({ cost: 6, marginPercent })).toThrow(`wanted less than 100, got ${marginPercent}`);
  });

  it("is below 0 when sold at a loss", () => expect(marginShare({ price: 8, cost: 10 })).toBe(-0.25));
});
