import { describe, expect, it } from "vitest";
import { airDryDays } from "../../../src/math/drying/air-dry-days";
import { AIR_DRYING_DAYS } from "../../../src/math/drying/air-drying-days.table";
import { emcPercent } from "../../../src/math/drying/emc";
import { NoAnswer } from "../../../src/math/errors";
import { speciesNamed, type SpeciesName } from "../../../src/math/wood/species";

const yard = {
  species: "northern red oak",
  thicknessIn: 1,
  toPercent: 20,
  temperatureF: 70,
  humidityPercent: 65,
  bound: "typical",
} as const;

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
