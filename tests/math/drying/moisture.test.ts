import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { moisturePercent, ovendryWeightLb, weightAtMoistureLb } from "../../../src/math/drying/moisture";
import { NoAnswer } from "../../../src/math/errors";

const SEED = { seed: 14, numRuns: 1000 };
const weights = fc.double({ min: 0.001, max: 1e5, noNaN: true });
const moistures = fc.double({ min: 0, max: 280, noNaN: true });

describe("moisture content", () => {
  it("of a 30-lb board with 10 lb of water is 50 % (University of Vermont Extension)", () => {
    expect(moisturePercent({ wetLb: 30, dryLb: 20 })).toBe(50);
    expect(ovendryWeightLb({ wetLb: 30, moisturePercent: 50 })).toBe(20);
  });

  it("passes 100 % where there is more water than wood", () => {
    expect(moisturePercent({ wetLb: 45, dryLb: 20 })).toBe(125);
  });

  it("is 0 when nothing is lost in the oven, and has no answer when weight is gained", () => {
    expect(moisturePercent({ wetLb: 20, dryLb: 20 })).toBe(0);
    expect(() => moisturePercent({ wetLb: 19.99, dryLb: 20 })).toThrow(/wanted 20 or more, got 19.99/);
  });

  it("ends at 280 %, more than any wood of the table holds", () => {
    expect(moisturePercent({ wetLb: 38, dryLb: 10 })).toBe(280);
    expect(() => moisturePercent({ wetLb: 38.1, dryLb: 10 })).toThrow(NoAnswer);
    expect(() => ovendryWeightLb({ wetLb: 10, moisturePercent: 300 })).toThrow(/0 to 280, got 300/);
  });
});

describe("the weight at another moisture", () => {
  it("is the oven-dry weight with the target's water", () => {
    // By hand: 4.5 lb at 60 % holds 2.8125 lb of wood, with 8 % of water 3.0375
    expect(weightAtMoistureLb({ weightLb: 4.5, moisturePercent: 60, targetPercent: 8 })).toBeCloseTo(3.0375, 12);
  });

  it("comes back to the weight it began with", () => {
    fc.assert(
      fc.property(weights, moistures, moistures, (weightLb, moisturePercent, targetPercent) => {
        const there = weightAtMoistureLb({ weightLb, moisturePercent, targetPercent });
        const back = weightAtMoistureLb({
          weightLb: there,
          moisturePercent: targetPercent,
          targetPercent: moisturePercent,
        });
        expect(Math.abs(back / weightLb - 1)).toBeLessThan(1e-9);
      }),
      SEED,
    );
  });

  it("has no answer past 280 %", () => {
    expect(() => weightAtMoistureLb({ weightLb: 1, moisturePercent: 60, targetPercent: 281 })).toThrow(/target/);
  });
});
