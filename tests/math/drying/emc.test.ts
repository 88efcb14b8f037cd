import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { emcPercent, humidityPercentForEmc } from "../../../src/math/drying/emc";
import { NoAnswer } from "../../../src/math/errors";
import { celsiusFromFahrenheit } from "../../../src/math/units";
import { rowsOf } from "../../csv";

const SEED = { seed: 13, numRuns: 2000 };
const temperatures = fc.double({ min: 30, max: 210, noNaN: true });
const humidities = fc.double({ min: 0.001, max: 99.99, noNaN: true });

describe("equilibrium moisture", () => {
  it("is what is printed, to half its last digit", () => {
    for (const row of rowsOf("wood/seen_single_figures.csv")) {
      const digits = row["printed"]!.split(".")[1]?.length ?? 0;
      const found = emcPercent({
        temperatureF: Number(row["temperature_F"]),
        humidityPercent: Number(row["humidity_pct"]),
      });
      expect(Math.abs(found - Number(row["printed"])), row["source"]).toBeLessThanOrEqual(0.5 * 10 ** -digits);
    }
  });

  it("comes out the same by the handbook's Celsius coefficients, within 0.013 points from 30 to 210 °F", () => {
    // The two sets are rounded by themselves: 0.013 is the most they were found to differ by, not an error of ours.
    const celsius = rowsOf("wood/emc_equation_coefficients.csv").filter(({ unit }) => unit === "C");
    for (let temperatureF = 30; temperatureF <= 210; temperatureF += 10)
      for (let humidityPercent = 5; humidityPercent <= 95; humidityPercent += 5) {
        const T = celsiusFromFahrenheit(temperatureF);
        const at = (name: string) => {
          const row = celsius.find(({ coef }) => coef === name)!;
          return Number(row["a"]) + Number(row["b"]) * T + Number(row["c"]) * T ** 2;
        };
        const kh = (at("K") * humidityPercent) / 100;
        const [k1, k2] = [at("K1"), at("K2")];
        const sum = kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2);
        const apart = Math.abs((1800 / at("W")) * sum - emcPercent({ temperatureF, humidityPercent }));
        expect(apart, `${temperatureF} °F ${humidityPercent} %`).toBeLessThan(0.0135);
      }
  });

  it("rises with humidity, over the whole range of temperature", () => {
    fc.assert(
      fc.property(temperatures, humidities, humidities, (temperatureF, a, b) => {
        const at = (humidityPercent: number) => emcPercent({ temperatureF, humidityPercent });
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
      }),
      SEED,
    );
  });

  it("answers at the ends of its range and says both limits outside", () => {
    expect(emcPercent({ temperatureF: 30, humidityPercent: 50 })).toBeGreaterThan(9);
    expect(emcPercent({ temperatureF: 210, humidityPercent: 50 })).toBeGreaterThan(4);
    expect(() => emcPercent({ temperatureF: 29.9, humidityPercent: 50 })).toThrow(/wanted 30 to 210, got 29.9/);
    expect(() => emcPercent({ temperatureF: 210.1, humidityPercent: 50 })).toThrow(NoAnswer);
    expect(() => emcPercent({ temperatureF: 70, humidityPercent: 100 })).toThrow(/humidity .* less than 100, got 100/);
    expect(() => emcPercent({ temperatureF: 70, humidityPercent: -1 })).toThrow(/humidity .* got -1/);
    expect(emcPercent({ temperatureF: 70, humidityPercent: 0 })).toBe(0);
  });
});

describe("the humidity for a moisture", () => {
  it("gives that moisture back, to a billionth", () => {
    fc.assert(
      fc.property(temperatures, humidities, (temperatureF, humidityPercent) => {
        const moisturePercent = emcPercent({ temperatureF, humidityPercent });
        fc.pre(moisturePercent < Math.floor(emcPercent({ temperatureF, humidityPercent: 99.999 })));
        const back = humidityPercentForEmc({ temperatureF, moisturePercent });
        expect(Math.abs(back / humidityPercent - 1)).toBeLessThan(1e-9);
        expect(Math.abs(emcPercent({ temperatureF, humidityPercent: back }) / moisturePercent - 1)).toBeLessThan(1e-9);
      }),
      SEED,
    );
  });

  it("has no answer for a moisture that no air holds wood at", () => {
    expect(() => humidityPercentForEmc({ temperatureF: 70, moisturePercent: 40 })).toThrow(
      /wanted less than 2\d(\.\d)?, got 40/,
    );
    expect(() => humidityPercentForEmc({ temperatureF: 70, moisturePercent: 0 })).toThrow(NoAnswer);
    expect(() => humidityPercentForEmc({ temperatureF: 20, moisturePercent: 8 })).toThrow(/30 to 210/);
  });
});
