import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buckPlan, type Stem } from "../../../src/math/logs/buck-plan";

/** The most that a stem gives, by every sequence of logs and of skipped inches, from the butt up: nothing is kept. */
function byTryingAll(stem: Stem, worth: (smallIn: number, lengthFt: number) => number): number {
  const stemIn = Math.floor(stem.lengthFt * 12 + 1e-9);
  const steps = stem.diametersIn.length - 1;
  const thick = (place: number) => {
    const at = Math.min((place / (stem.lengthFt * 12)) * steps, steps);
    const lower = Math.min(Math.floor(at), steps - 1);
    return stem.diametersIn[lower]! * (1 - (at - lower)) + stem.diametersIn[lower + 1]! * (at - lower);
  };
  const from = (place: number): number => {
    if (place >= stemIn) return 0;
    let most = 0;
    for (const lengthFt of stem.lengthsFt)
      for (const skipped of [0, 1, 2, 5, 12]) {
        const end = place + skipped + Math.ceil(lengthFt * 12 + stem.trimIn);
        if (end <= stemIn) most = Math.max(most, worth(thick(end), lengthFt) + from(end));
      }
    return most;
  };
  return from(0);
}

const doyle = (diameterIn: number, lengthFt: number) => (diameterIn < 4 ? 0 : ((diameterIn - 4) / 4) ** 2 * lengthFt);
const STEM: Stem = { diametersIn: [20, 14], lengthFt: 36, lengthsFt: [8, 12], prices: [], trimIn: 0, rule: "Doyle" };

describe("the cuts of a long stem", () => {
  it("scale for the most by every way to cut, on 300 small stems that taper", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 30, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.integer({ min: 6, max: 26 }),
        fc.uniqueArray(fc.integer({ min: 5, max: 16 }), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 0, max: 8 }),
        (butt, left, lengthFt, lengthsFt, trimIn) => {
          const stem = { ...STEM, diametersIn: [butt, butt * left], lengthFt, lengthsFt, trimIn };
          expect(buckPlan(stem).worth).toBeCloseTo(byTryingAll(stem, doyle), 6);
        },
      ),
      { seed: 3, numRuns: 300 },
    );
  });

  it("sell for the most too, with a price by thickness and length, on 200 stems", () => {
    const prices = [
      { fromIn: 6, price: 0.3 },
      { fromIn: 12, price: 0.6 },
      { fromIn: 10, price: 0.9, lengthFt: 8 },
    ];
    const worth = (smallIn: number, lengthFt: number) => {
      const price = lengthFt === 8 && smallIn >= 10 ? 0.9 : smallIn >= 12 ? 0.6 : smallIn >= 6 ? 0.3 : 0;
      return price * doyle(smallIn, lengthFt);
    };
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 24 }), fc.integer({ min: 8, max: 24 }), (butt, lengthFt) => {
        const stem = { ...STEM, diametersIn: [butt, butt * 0.7], lengthFt, lengthsFt: [6, 8], prices, trimIn: 3 };
        expect(buckPlan(stem).worth).toBeCloseTo(byTryingAll(stem, worth), 6);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("by hand: a stem of 20 in without taper, 24 ft, gives two logs of 12 ft or three of 8, which scale the same", () => {
    // Doyle: (20 - 4)^2 / 16 = 16 board feet a foot
    const { worth, leftIn } = buckPlan({ ...STEM, diametersIn: [20, 20], lengthFt: 24 });
    expect(worth).toBe(384);
    expect(leftIn).toBe(0);
  });

  it("by hand: with 6 in of trim 24 ft holds one log of 12 ft and one of 8, and 3 ft are left", () => {
    const { worth, leftIn, logs } = buckPlan({ ...STEM, diametersIn: [20, 20], lengthFt: 24, trimIn: 6 });
    expect(worth).toBe(320);
    expect(leftIn).toBe(36);
    expect(logs.map(({ lengthFt }) => lengthFt).sort()).toEqual([12, 8]);
  });

  it("by hand: the butt log of 12 ft and a top log of 8 ft, 18 and 16 in at their small ends", () => {
    // 20 ft from 21 in to 16 in: 18 in at 12 ft; 14^2 / 16 * 12 = 147 and 12^2 / 16 * 8 = 72
    const { logs } = buckPlan({ ...STEM, diametersIn: [21, 16], lengthFt: 20 });
    expect(logs.reduce((sum, { boardFeet }) => sum + boardFeet, 0)).toBeGreaterThanOrEqual(147 + 72 - 1e-9);
    for (const { toIn, smallIn } of logs) expect(smallIn).toBeCloseTo(21 - (5 * toIn) / 240, 9);
  });

  it("are none on a stem that is too short, too thin or not bought, and all of it is left", () => {
    expect(buckPlan({ ...STEM, lengthFt: 7 })).toEqual({ logs: [], worth: 0, leftIn: 84 });
    expect(buckPlan({ ...STEM, diametersIn: [3, 2] }).logs).toEqual([]);
    expect(buckPlan({ ...STEM, prices: [{ fromIn: 30, price: 1 }] }).logs).toEqual([]);
  });

  it("may lie just at the end of the stem, and a quarter of an inch less is too short", () => {
    expect(buckPlan({ ...STEM, lengthFt: 8, trimIn: 0 }).logs.length).toBe(1);
    expect(buckPlan({ ...STEM, lengthFt: 8, trimIn: 0.25 }).logs.length).toBe(0);
  });

  it("are refused for one reading, no length, or a stem that no tree has", () => {
    expect(() => buckPlan({ ...STEM, diametersIn: [20] })).toThrow("diameters: wanted 2 or more");
    expect(() => buckPlan({ ...STEM, lengthsFt: [] })).toThrow("number of lengths: wanted 1 to 40, got 0");
    expect(() => buckPlan({ ...STEM, lengthFt: 301 })).toThrow("wanted 0 to 300, got 301");
  });
});
