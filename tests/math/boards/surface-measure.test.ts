import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { surfaceMeasureFt2 } from "../../../src/math/boards/surface-measure";
import { CM_PER_IN, IN_PER_FT, M_PER_FT } from "../../../src/math/units";

const measure = (widthIn: number, lengthFt: number, halves: "down" | "even" = "down") =>
  surfaceMeasureFt2({ widthIn, lengthFt, halves });

describe("surface measure", () => {
  it("brings a face to the nearest foot (King: 8 3/4 and 9 1/4 in by 12 ft are both 9)", () => {
    expect(measure(8.75, 12)).toBe(9);
    expect(measure(9.25, 12)).toBe(9);
  });

  it("drops an exact half by the retail rule, and sends it to the even foot for export", () => {
    expect(measure(8.5, 12)).toBe(8);
    expect(measure(9.5, 12)).toBe(9);
    expect(measure(8.5, 12, "even")).toBe(8);
    expect(measure(9.5, 12, "even")).toBe(10);
    expect(measure(0.5, 12, "even")).toBe(0);
    expect(measure(1.5, 12, "even")).toBe(2);
  });

  it("lets only an exact half go by the rule: a hair over it goes up", () => {
    expect(measure(8.5001, 12)).toBe(9);
    expect(measure(8.4999, 12, "even")).toBe(8);
  });

  it("drops the part of a foot in the length", () => {
    expect(measure(12, 8.5)).toBe(8);
    expect(measure(12, 8.999)).toBe(8);
    expect(measure(12, 9)).toBe(9);
  });

  it("measures from a length of 1 ft, and nothing shorter", () => {
    expect(measure(12, 1)).toBe(1);
    expect(() => measure(12, 0.99)).toThrow("length of the board (ft): wanted 1 or more, got 0.99");
  });

  it("takes metric sizes for the inch sizes they are, on the half and on the foot", () => {
    const throughMetric = (inches: number) => Math.round(((inches * CM_PER_IN) / CM_PER_IN) * 1e9) / 1e9;
    for (let quarters = 8; quarters <= 120; quarters++)
      for (let feet = 1; feet <= 16; feet++) {
        const metricFt = throughMetric(((feet * M_PER_FT) / M_PER_FT) * IN_PER_FT) / IN_PER_FT;
        expect(measure(throughMetric(quarters / 4), metricFt)).toBe(measure(quarters / 4, feet));
      }
  });

  it("is never more than half a foot from the face on whole feet of length", () => {
    const width = fc.integer({ min: 1, max: 480 }).map((eighths) => eighths / 8);
    fc.assert(
      fc.property(width, fc.integer({ min: 1, max: 30 }), (widthIn, lengthFt) => {
        for (const halves of ["down", "even"] as const) {
          const whole = measure(widthIn, lengthFt, halves);
          expect(Number.isInteger(whole)).toBe(true);
          expect(Math.abs(whole - (widthIn * lengthFt) / 12)).toBeLessThanOrEqual(0.5 + 1e-9);
        }
      }),
      { seed: 12 },
    );
  });
});
