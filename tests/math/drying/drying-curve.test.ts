import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dryingCurve } from "../../../src/math/drying/drying-curve";

const SEED = { seed: 16, numRuns: 500 };

describe("the drying curve", () => {
  it("has the standard error of n - 2 readings, worked by hand", () => {
    // ln(M - 10) lies off the line ln 50 - 0.05 t by +d, -d, -d, +d, which moves neither its height nor its slope; the
    // squares add up to 4 d^2, over 4 - 2 readings.
    const off = 0.02;
    const { ratePerDay, spread } = dryingCurve({
      emcPercent: 10,
      readings: [off, -off, -off, off].map((miss, week) => ({
        day: week * 7,
        moisturePercent: 10 + 50 * Math.exp(-0.05 * week * 7 + miss),
      })),
    });
    expect(ratePerDay).toBeCloseTo(0.05, 12);
    expect(spread!.logarithm).toBeCloseTo(off * Math.sqrt(2), 12);
  });

  it("gives back the rate and the start of readings that lie on one", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.002, max: 0.2, noNaN: true }),
        fc.double({ min: 30, max: 120, noNaN: true }),
        fc.double({ min: 4, max: 20, noNaN: true }),
        fc.integer({ min: -50_000, max: 50_000 }),
        (rate, start, emc, firstDay) => {
          const days = [0, 3, 7, 15, 30];
          const onCurve = days.map((day) => ({
            day: firstDay + day,
            moisturePercent: emc + (start - emc) * Math.exp(-rate * day),
          }));
          const curve = dryingCurve({ readings: onCurve, emcPercent: emc });
          expect(curve.ratePerDay / rate).toBeCloseTo(1, 7);
          expect(curve.startingMoisturePercent).toBeCloseTo(start, 6);
          expect(curve.spread!.pointsOfMoisture).toBeLessThan(1e-6);
        },
      ),
      SEED,
    );
  });
});
