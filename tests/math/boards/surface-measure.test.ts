import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { surfaceMeasureFt2 } from "../../../src/math/boards/surface-measure";
import { tallyBoardFeet } from "../../../src/math/boards/tally";
import { isExactHalf, nearestWholeFoot } from "../../../src/math/boards/whole-feet";
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

describe("a half foot", () => {
  it("is known as one, and nothing else is", () => {
    expect([0.5, 8.5, 100.5].map(isExactHalf)).toEqual([true, true, true]);
    expect([0, 8.49, 8.51, 9].map(isExactHalf)).toEqual([false, false, false, false]);
  });

  it("goes the way it is sent", () => {
    expect(nearestWholeFoot(8.5, "down")).toBe(8);
    expect(nearestWholeFoot(8.5, "up")).toBe(9);
  });
});

describe("a tally", () => {
  const tally = (widths: number[], lengthFt: number, thicknessIn = 1, halves: "down" | "alternate" = "down") =>
    tallyBoardFeet({ boards: widths.map((widthIn) => ({ widthIn, lengthFt })), thicknessIn, halves });

  it("sends exact halves down and up by turns: two boards 8 1/2 in by 12 ft are 8 and 9 (King)", () => {
    expect(tally([8.5, 8.5], 12, 1, "alternate")).toBe(17);
    expect(tally([8.5, 8.5], 12, 1, "down")).toBe(16);
  });

  it("takes turns at exact halves only, in the order of the list", () => {
    expect(tally([8.5], 12, 1, "alternate")).toBe(8);
    expect(tally([8.5, 7.25, 8.75, 8.5, 8.5], 12, 1, "alternate")).toBe(8 + 7 + 9 + 9 + 8);
  });

  it("adds the pieces' whole feet before it multiplies by the thickness", () => {
    expect(tally([6.25, 6.25], 8, 1.25)).toBe((4 + 4) * 1.25);
    expect(tally([6.25, 6.25], 8, 0.75)).toBe(4 + 4);
  });

  it("of one board is its surface measure times its thickness", () => {
    expect(tally([9.25], 13, 2)).toBe(2 * measure(9.25, 13));
  });

  it("of nothing is nothing", () => {
    expect(tally([], 12)).toBe(0);
  });
});
