import { describe, expect, it } from "vitest";
import { scaleLengthFt } from "../../../src/math/logs/scale-length";

describe("the credited length", () => {
  it.each([
    [16 + 4 / 12, 4, undefined, 16], // 16'4" with 4 in of trim
    [16 + 3.9 / 12, 4, undefined, 15],
    [15 + 10 / 12, 4, 2, 14],
    [16 + 4 / 12, 4, 2, 16], // the Idaho contest's class
    [12.99, undefined, undefined, 12], // Wengert: the last full foot
    [8, undefined, undefined, 8],
    [8.6, undefined, 0.5, 8.5],
  ])("of %d ft with %s in of trim by a step of %s ft is %d", (lengthFt, trimIn, stepFt, expected) => {
    expect(scaleLengthFt({ lengthFt, trimIn, stepFt })).toBeCloseTo(expected, 9);
  });

  it("credits every whole foot that has its trim, whatever the inches", () => {
    for (let feet = 4; feet <= 40; feet++)
      for (let trim = 0; trim <= 12; trim++)
        expect(scaleLengthFt({ lengthFt: (feet * 12 + trim) / 12, trimIn: trim })).toBe(feet);
  });

  it("refuses what leaves no step", () => {
    expect(() => scaleLengthFt({ lengthFt: 1, trimIn: 6 })).toThrow("at least one step of 1");
    expect(() => scaleLengthFt({ lengthFt: 1, trimIn: 12 })).toThrow("shorter than the log");
    expect(() => scaleLengthFt({ lengthFt: 301 })).toThrow("wanted 0 to 300, got 301");
  });
});
