import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { airDryDays } from "../../../src/math/drying/air-dry-days";
import { AIR_DRYING_DAYS } from "../../../src/math/drying/air-drying-days.table";
import { emcPercent } from "../../../src/math/drying/emc";
import { kilnDays } from "../../../src/math/drying/kiln-days";
import { redOakTimeConstantDays } from "../../../src/math/drying/time-constant";
import { NoAnswer } from "../../../src/math/errors";
import { speciesNamed, type SpeciesName } from "../../../src/math/wood/species";

const SEED = { seed: 15, numRuns: 500 };
const yard = {
  species: "northern red oak",
  thicknessIn: 1,
  toPercent: 20,
  temperatureF: 70,
  humidityPercent: 65,
  bound: "typical",
} as const;
const kiln = {
  species: "northern red oak",
  thicknessIn: 1,
  fromPercent: 85,
  toPercent: 25,
  temperatureF: 150,
  humidityPercent: 50,
} as const;

describe("the time constant of red oak", () => {
  it("at 150 °F rests on the vapor pressure that was seen, 191.8 mmHg", () => {
    const perDay = 1 / redOakTimeConstantDays({ thicknessIn: 1, temperatureF: 150 });
    expect((perDay - 0.0575) / 0.00142).toBeCloseTo(191.8, 1);
  });

  it("agrees with a worked example that is itself from memory: 3.03 days, and 4.5 days from 85 to 25 %", () => {
    expect(redOakTimeConstantDays({ thicknessIn: 1, temperatureF: 150 })).toBeCloseTo(3.03, 2);
    expect(kilnDays(kiln)).toBeCloseTo(4.5, 1);
  });

  it("answers for boards from 1/8 to 12 in, and takes 84 typed for 8/4 as a slip", () => {
    const at = (thicknessIn: number) => () => redOakTimeConstantDays({ thicknessIn, temperatureF: 70 });
    expect(at(0.125)()).toBeLessThan(at(12)());
    for (const thicknessIn of [0.124, 12.1, 84])
      expect(at(thicknessIn)).toThrow(`board thickness (in): wanted 0.125 to 12, got ${thicknessIn}`);
  });

  it("grows with the thickness to the power 1.52", () => {
    expect(kilnDays({ ...kiln, thicknessIn: 2 }) / kilnDays(kiln)).toBeCloseTo(2 ** 1.52, 10);
  });
});

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

describe("days to air dry", () => {
  it("one inch from green to 20 % in the usual yard are the table's, whatever the species", () => {
    for (const [name, { fast, slow }] of Object.entries(AIR_DRYING_DAYS)) {
      const species = name as SpeciesName;
      expect(airDryDays({ ...yard, species, bound: "fast" })).toBeCloseTo(fast, 8);
      expect(airDryDays({ ...yard, species, bound: "slow" })).toBeCloseTo(slow, 8);
      expect(airDryDays({ ...yard, species })).toBeCloseTo(Math.sqrt(fast * slow), 8);
    }
  });

  it("begin at the species' green moisture unless told otherwise", () => {
    const { greenMoisturePercent } = speciesNamed("northern red oak");
    expect(airDryDays({ ...yard, fromPercent: greenMoisturePercent })).toBe(airDryDays(yard));
    expect(airDryDays({ ...yard, fromPercent: 50 })).toBeLessThan(airDryDays(yard));
  });

  it("are more for thick boards, cold air, damp air and a lower target", () => {
    const days = airDryDays(yard);
    expect(airDryDays({ ...yard, thicknessIn: 2 }) / days).toBeCloseTo(2 ** 1.52, 10);
    expect(airDryDays({ ...yard, temperatureF: 45 })).toBeGreaterThan(days);
    expect(airDryDays({ ...yard, humidityPercent: 75 })).toBeGreaterThan(days);
    expect(airDryDays({ ...yard, toPercent: 15 })).toBeGreaterThan(days);
  });

  it("have no answer at or under the equilibrium moisture, and the message gives it", () => {
    expect(() => airDryDays({ ...yard, toPercent: 10 })).toThrow(/dries wood to 12\.0 and no further, got 10/);
    const equilibrium = emcPercent(yard);
    expect(() => airDryDays({ ...yard, toPercent: equilibrium })).toThrow(NoAnswer);
    expect(airDryDays({ ...yard, toPercent: equilibrium + 0.01 })).toBeGreaterThan(0);
  });

  it("name the table that lacks a species", () => {
    expect(() => airDryDays({ ...yard, species: "sassafras" })).toThrow(/sassafras in the table of air-drying days/);
  });
});
