import { describe, expect, it } from "vitest";
import {
  dryForecastTable as dryForecast,
  dryRateTable as dryRate,
} from "../../../src/functions/drying/own-stack-tables";
import { dryingCurve, type Reading } from "../../../src/math/drying/drying-curve";
import type { TableCell } from "../../../src/cells/spread";
import { NoAnswer } from "../../../src/math/errors";

const readings = (...pairs: [day: number, moisturePercent: number][]): Reading[] =>
  pairs.map(([day, moisturePercent]) => ({ day, moisturePercent }));
const scattered = readings([0, 62], [20, 45], [45, 30], [70, 24], [95, 18]);
const valueOf = (rows: TableCell[][], figure: string) => rows.find(([name]) => name === figure)![1]!;

describe("the fit to the readings of a stack", () => {
  it("by hand: excess 48, 24, 12 halves every 30 days", () => {
    const rows = dryRate({ readings: readings([0, 60], [30, 36], [60, 24]), emcPercent: 12 });
    expect(valueOf(rows, "half-time")).toBeCloseTo(30, 9);
    expect(valueOf(rows, "drying rate")).toBeCloseTo(Math.LN2 / 30, 12);
    expect(valueOf(rows, "starting moisture")).toBeCloseTo(60, 9);
    expect(valueOf(rows, "readings used")).toBe(3);
  });

  it("has a standard error by hand: excess e^2, e^1, e^1 on days 0, 1, 2", () => {
    // Least squares on 2, 1, 1: slope -1/2, fitted 11/6, 8/6, 5/6. Misses e^2 - e^(11/6), e - e^(4/3), e - e^(5/6).
    const excess = [Math.exp(2), Math.E, Math.E];
    const fitted = [Math.exp(11 / 6), Math.exp(8 / 6), Math.exp(5 / 6)];
    const rows = dryRate({
      readings: readings(...excess.map((e, day): [number, number] => [day, 10 + e])),
      emcPercent: 10,
    });
    const squares = excess.map((e, i) => (e - fitted[i]!) ** 2).reduce((a, b) => a + b);
    expect(valueOf(rows, "drying rate")).toBeCloseTo(0.5, 12);
    expect(valueOf(rows, "standard error of the fit")).toBeCloseTo(Math.sqrt(squares), 12);
  });

  it("works from two readings, and says that their spread is not known", () => {
    const rows = dryRate({ readings: readings([0, 60], [30, 36]), emcPercent: 12 });
    expect(valueOf(rows, "half-time")).toBeCloseTo(30, 9);
    expect(valueOf(rows, "standard error of the fit")).toBe("not known from two readings");
  });

  it.each<[string, Reading[], number, RegExp]>([
    ["one reading", readings([0, 60]), 12, /wanted 2 or more, got 1/],
    ["readings that rise", readings([0, 30], [30, 36]), 12, /do not fall toward 12 %/],
    ["readings that stand still", readings([0, 30], [30, 30]), 12, /do not fall/],
    ["a day before the one before", readings([0, 60], [30, 36], [20, 30]), 12, /got 20 after 30/],
    ["a blank among dates", readings([0, 60], [46_014, 36]), 12, /within 20 years .* got 46014 after 0 \(a blank/],
    ["one day twice", readings([0, 60], [30, 36], [30, 35]), 12, /got 30 after 30/],
    ["a reading at the equilibrium", readings([0, 60], [30, 12]), 12, /above the equilibrium moisture 12 %, got 12/],
    ["a reading past all wood", readings([0, 300], [30, 40]), 12, /280, got 300/],
  ])("has no answer to %s, and says why", (_, given, emcPercent, message) => {
    expect(() => dryingCurve({ readings: given, emcPercent })).toThrow(NoAnswer);
    expect(() => dryingCurve({ readings: given, emcPercent })).toThrow(message);
  });
});

describe("the forecast", () => {
  it("by hand: from an excess of 12 on day 60 to 3 is two more half-times of 30 days", () => {
    const rows = dryForecast({ readings: readings([0, 60], [30, 36], [60, 24]), emcPercent: 12, targetPercent: 15 });
    expect(valueOf(rows, "target reached")).toBeCloseTo(120, 8);
    expect(valueOf(rows, "days after the last reading")).toBeCloseTo(60, 8);
  });

  it("puts the day between the early and the late one, nearer to the early", () => {
    const rows = dryForecast({ readings: scattered, emcPercent: 11, targetPercent: 14 });
    const [day, early, late] = ["target reached", "early", "late"].map((figure) => Number(valueOf(rows, figure)));
    expect(early!).toBeLessThan(day!);
    expect(late!).toBeGreaterThan(day!);
    expect(late! - day!).toBeGreaterThan(day! - early!);
  });

  it("has its early and late day where the band of two standard errors meets the target", () => {
    const curve = dryingCurve({ readings: scattered, emcPercent: 11 });
    const rows = dryForecast({ readings: scattered, emcPercent: 11, targetPercent: 14 });
    for (const figure of ["early", "late"]) {
      const off = Number(valueOf(rows, figure)) - curve.meanDay;
      const line = curve.meanLogarithm - curve.ratePerDay * off;
      const error = curve.spread!.logarithm * Math.sqrt(1 / curve.count + off ** 2 / curve.sumOfSquaredDays);
      expect(Math.abs(line - Math.log(14 - 11))).toBeCloseTo(2 * error, 9);
    }
  });

  it("further off than 20 years has no answer: the readings hardly fall", () => {
    const ask = (second: number) => () =>
      dryForecast({ readings: readings([0, 70], [30, second]), emcPercent: 11, targetPercent: 12 });
    expect(valueOf(ask(60)(), "target reached")).toBeGreaterThan(600);
    expect(ask(69.9)).toThrow(/days to the target after the last reading: wanted -7305 to 7305, got/);
  });

  it("moves with the calendar: dates of the sheet give a date", () => {
    const later = scattered.map(({ day, moisturePercent }) => ({ day: day + 46_000, moisturePercent }));
    const at = (given: Reading[]) =>
      Number(valueOf(dryForecast({ readings: given, emcPercent: 11, targetPercent: 14 }), "target reached"));
    expect(at(later) - at(scattered)).toBeCloseTo(46_000, 6);
  });

  it("says that two readings show no spread, and that wild ones show too much", () => {
    const two = dryForecast({ readings: readings([0, 60], [30, 36]), emcPercent: 12, targetPercent: 15 });
    expect(valueOf(two, "late")).toBe("not known from two readings");
    const wild = dryForecast({ readings: readings([0, 40], [1, 60], [2, 30]), emcPercent: 12, targetPercent: 15 });
    expect(valueOf(wild, "late")).toBe("not known: the readings scatter too much");
  });

  it("has no answer for a target the air cannot reach, and gives the equilibrium moisture", () => {
    const ask = (targetPercent: number) => () => dryForecast({ readings: scattered, emcPercent: 11, targetPercent });
    expect(ask(11)).toThrow(/dries wood to 11 and no further, got 11/);
    expect(ask(9)).toThrow(NoAnswer);
    expect(ask(70)).toThrow(/target .* got 70/);
  });
});

describe("a refusal", () => {
  const emcPercent = 11.963820205629977; // as EMC gives it for 70 °F and 65 %
  it("shows the equilibrium moisture in six digits", () => {
    const forecast = (last: number, targetPercent: number) =>
      dryForecast({
        readings: [
          { day: 0, moisturePercent: 60 },
          { day: 30, moisturePercent: last },
        ],
        emcPercent,
        targetPercent,
      });
    expect(() => forecast(36, 10)).toThrow("the air dries wood to 11.9638 and no further, got 10");
    expect(() => forecast(11, 15)).toThrow("above the equilibrium moisture 11.9638 %, got 11 on day 30");
    expect(() => forecast(61, 15)).toThrow("they do not fall toward 11.9638 %");
  });
});
