import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kilnDays } from "../../../src/math/drying/kiln-days";
import { NoAnswer } from "../../../src/math/errors";

const SEED = { seed: 15, numRuns: 500 };
const kiln = {
  species: "northern red oak",
  thicknessIn: 1,
  fromPercent: 85,
  toPercent: 25,
  temperatureF: 150,
  humidityPercent: 50,
} as const;

describe("days in the kiln", () => {
  it("are known for red oak alone, and for others it says so", () => {
    expect(() => kilnDays({ ...kiln, species: "white oak" })).toThrow(/northern red oak only, got white oak/);
  });

  it("have no end at the equilibrium moisture, and the message gives it", () => {
    expect(() => kilnDays({ ...kiln, toPercent: 7 })).toThrow(/dries wood to 7\.\d and no further, got 7/);
    expect(() => kilnDays({ ...kiln, fromPercent: 20 })).toThrow(/wanted more than the target 25, got 20/);
    expect(() => kilnDays({ ...kiln, fromPercent: 300 })).toThrow(NoAnswer);
    expect(() => kilnDays({ ...kiln, humidityPercent: 100 })).toThrow(NoAnswer);
  });

  it("of two stretches add up to the days of the whole", () => {
    fc.assert(
      fc.property(fc.double({ min: 26, max: 84, noNaN: true }), (between) => {
        const parts = kilnDays({ ...kiln, toPercent: between }) + kilnDays({ ...kiln, fromPercent: between });
        expect(parts).toBeCloseTo(kilnDays(kiln), 8);
      }),
      SEED,
    );
  });
});
