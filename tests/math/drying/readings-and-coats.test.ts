import { describe, expect, it } from "vitest";
import { airDryDays } from "../../../src/math/drying/air-dry-days";
import { endCoatGallons } from "../../../src/math/drying/end-coat";
import { meterMoisturePercent } from "../../../src/math/drying/meter-reading";
import type { SpeciesName } from "../../../src/math/wood/species";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";

const count = printedValuesOf("meter readings and days in the yard");

describe("a pin meter's reading in cold or warm wood", () => {
  it("is set right as the rule prints it, and within 1.5 points of two makers' examples", () => {
    for (const row of rowsOf("wood/meter_temperature.csv").filter((row) => row["reading_pct"])) {
      const [degrees, unit] = row["wood_temp"]!.split(" ");
      const temperatureF = unit === "C" ? (Number(degrees) * 9) / 5 + 32 : Number(degrees);
      const found = meterMoisturePercent({ readingPercent: Number(row["reading_pct"]), temperatureF });
      // The rule's own example to the point; the makers' tables, in whole points, by the point and a half of a rule of thumb
      expect(Math.abs(found - Number(row["true_pct"])), row["source"]).toBeLessThanOrEqual(unit === "F" ? 1e-9 : 1.5);
      count();
    }
  });
  it("stands as it is at 70 degF, and answers up to its limits only", () => {
    expect(meterMoisturePercent({ readingPercent: 12, temperatureF: 70 })).toBe(12);
    expect(meterMoisturePercent({ readingPercent: 25, temperatureF: 30 })).toBe(27);
    expect(meterMoisturePercent({ readingPercent: 6, temperatureF: 150 })).toBe(2);
    expect(() => meterMoisturePercent({ readingPercent: 25.1, temperatureF: 70 })).toThrow("wanted 6 to 25, got 25.1");
    expect(() => meterMoisturePercent({ readingPercent: 5.9, temperatureF: 70 })).toThrow("wanted 6 to 25, got 5.9");
    expect(() => meterMoisturePercent({ readingPercent: 12, temperatureF: 29 })).toThrow("wanted 30 to 150, got 29");
    expect(() => meterMoisturePercent({ readingPercent: 12, temperatureF: 151 })).toThrow("wanted 30 to 150, got 151");
  });
});

describe("the days in the yard that were measured", () => {
  it("lie within the table's fast and slow ends, give or take a quarter", () => {
    for (const row of rowsOf("wood/air_drying_observed.csv")) {
      const yard = {
        species: row["wood"] as SpeciesName,
        thicknessIn: 1,
        toPercent: 20,
        temperatureF: 70,
        humidityPercent: 65,
      };
      const days = (bound: "fast" | "typical" | "slow") => airDryDays({ ...yard, bound });
      expect(Number(row["days_low"]), row["where"]).toBeGreaterThan(0.75 * days("fast"));
      expect(Number(row["days_high"]), row["where"]).toBeLessThan(1.25 * days("slow"));
      count(2);
    }
  });
  it("of sugar maple in Upper Michigan, 90 in the mean, are within a quarter of the typical", () => {
    const [maple] = rowsOf("wood/air_drying_observed.csv");
    const yard = {
      species: "sugar maple",
      thicknessIn: 1,
      toPercent: 20,
      temperatureF: 70,
      humidityPercent: 65,
    } as const;
    expect(airDryDays({ ...yard, bound: "typical" }) / Number(maple!["days_mean"])).toBeGreaterThan(0.75);
    expect(airDryDays({ ...yard, bound: "typical" }) / Number(maple!["days_mean"])).toBeLessThan(1.25);
    count();
  });
});

describe("sealer for the ends of logs", () => {
  it.each([
    // By hand: an end of 24 in is pi square feet
    [[24], 100, (2 * Math.PI) / 100],
    [[24, 24, 12], 50, (4.5 * Math.PI) / 50],
    [[27.0811], 8, 1],
  ])("%j at %d square feet a gallon", (diametersIn, coverageFt2, gallons) =>
    expect(endCoatGallons({ diametersIn, coverageFt2 })).toBeCloseTo(gallons, 5),
  );
  it("has no answer for a log or a coverage of nothing", () => {
    expect(() => endCoatGallons({ diametersIn: [24, 0], coverageFt2: 100 })).toThrow(
      "diameter (in): wanted more than 0",
    );
    expect(() => endCoatGallons({ diametersIn: [24], coverageFt2: 0 })).toThrow("coverage (square feet a gallon)");
    expect(endCoatGallons({ diametersIn: [], coverageFt2: 100 })).toBe(0);
  });
});
