import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tongueSharePercent } from "../../../src/math/haul/tongue";

describe("the share of a trailer on its hitch", () => {
  it("is 9 to 15 % of 7,000 lb for 630 to 1,050 lb on the tongue (trade page), owner's manuals asking 10 to 15", () => {
    for (const [onTongue, percent] of [
      [630, 9],
      [1050, 15],
    ] as const) {
      // The tongue's part put at the hitch, the rest over the axle.
      const loads = [
        { weightLb: onTongue, positionFt: 14 },
        { weightLb: 7000 - onTongue, positionFt: 0 },
      ];
      expect(tongueSharePercent({ loads, hitchFt: 14 })).toBeCloseTo(percent, 12);
    }
  });

  it("counts moments about the axle: 3,000 lb 3 ft ahead, 2,000 lb 1 ft behind, 14 ft to the hitch", () => {
    const loads = [
      { weightLb: 3000, positionFt: 3 },
      { weightLb: 2000, positionFt: -1 },
    ];
    // (9,000 - 2,000) / 14 = 500 lb of 5,000; with 12 % of a 2,000 lb trailer 740 of 7,000.
    expect(tongueSharePercent({ loads, hitchFt: 14 })).toBeCloseTo(10, 12);
    expect(tongueSharePercent({ loads, hitchFt: 14, emptyLb: 2000, emptySharePercent: 12 })).toBeCloseTo(740 / 70, 12);
  });

  it("is nothing for a load over the axle, all for one on the hitch, and below zero for one behind", () => {
    const at = (positionFt: number) => tongueSharePercent({ loads: [{ weightLb: 5000, positionFt }], hitchFt: 14 });
    expect(at(0)).toBe(0);
    expect(at(14)).toBeCloseTo(100, 12);
    expect(at(-1)).toBeLessThan(0);
    expect(() => at(14.1)).toThrow("load ahead of the axle (ft): wanted up to the hitch, 14, got 14.1");
  });

  it("grows as the load goes forward", () => {
    const place = fc.double({ min: -8, max: 10, noNaN: true });
    const step = fc.double({ min: 0.01, max: 4, noNaN: true });
    fc.assert(
      fc.property(place, step, (positionFt, forward) => {
        const at = (where: number) =>
          tongueSharePercent({
            loads: [{ weightLb: 5000, positionFt: where }],
            hitchFt: 14,
            emptyLb: 1800,
            emptySharePercent: 12,
          });
        expect(at(positionFt + forward)).toBeGreaterThan(at(positionFt));
      }),
      { seed: 9, numRuns: 200 },
    );
  });

  it("wants the empty trailer's weight and its share together", () => {
    const loads = [{ weightLb: 5000, positionFt: 1 }];
    expect(() => tongueSharePercent({ loads, hitchFt: 14, emptyLb: 2000 })).toThrow(
      "both or neither, got 2000 lb and 0 %",
    );
    expect(() => tongueSharePercent({ loads, hitchFt: 14, emptySharePercent: 12 })).toThrow("both or neither");
    expect(() => tongueSharePercent({ loads, hitchFt: 14, emptyLb: 2000, emptySharePercent: 100 })).toThrow(
      "less than 100",
    );
  });

  it("has no answer without a hitch or without weight", () => {
    expect(() => tongueSharePercent({ loads: [], hitchFt: 0 })).toThrow("hitch ahead of the axle (ft)");
    expect(() => tongueSharePercent({ loads: [], hitchFt: 14 })).toThrow("weight of trailer and load (lb)");
  });
});
