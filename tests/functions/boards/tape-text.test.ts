import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LENGTH_UNITS, lengthInUnit } from "../../../src/math/boards/length-in-unit";
import { feetInchesText, fractionText } from "../../../src/functions/boards/tape-text";

const fraction = (lengthIn: number, denominator = 16) => fractionText({ lengthIn, denominator });
const feetInches = (lengthIn: number, denominator = 16) => feetInchesText({ lengthIn, denominator });

describe("a fraction for the tape", () => {
  it.each([
    [24.5, "24-1/2"],
    [24, "24"],
    [0.75, "3/4"],
    [0.03, "0"],
    [-0.03, "0"],
    [-24.5, "-24-1/2"],
    [-0.0625, "-1/16"],
    [15.999, "16"],
    [0.97, "1"],
  ])("%d in is %s", (lengthIn, text) => expect(fraction(lengthIn)).toBe(text));

  it("goes to the nearest, and exactly between two away from zero", () => {
    expect(fraction(0.09)).toBe("1/16");
    expect(fraction(0.1)).toBe("1/8");
    expect(fraction(3 / 32)).toBe("1/8");
    expect(fraction(-3 / 32)).toBe("-1/8");
  });

  it("takes any whole denominator from 1 to 10,000", () => {
    expect(fraction(2.4, 1)).toBe("2");
    expect(fraction(1 / 3, 3)).toBe("1/3");
    expect(fraction(0.1234, 10_000)).toBe("617/5000");
    for (const denominator of [0, -16, 10_001]) expect(() => fraction(1, denominator)).toThrow("wanted 1 to 10000");
    expect(() => fraction(1, 2.5)).toThrow("wanted a whole number, got 2.5");
  });

  it("ends where a number no longer holds sixteenths", () => {
    expect(fraction(1e9)).toBe("1000000000");
    expect(() => fraction(1.1e9)).toThrow("length (in)");
    expect(() => feetInches(-1.1e9)).toThrow("length (in)");
  });
});

describe("feet and inches for the tape", () => {
  it.each([
    [102.5, `8'-6 1/2"`],
    [11.999, `1'-0"`],
    [23.97, `2'-0"`],
    [23.96, `1'-11 15/16"`],
    [96.625, `8'-0 5/8"`],
    [6.5, `0'-6 1/2"`],
    [0.5, `0'-0 1/2"`],
    [0, `0'-0"`],
    [-102.5, `-8'-6 1/2"`],
    [-11.999, `-1'-0"`],
    [-0.01, `0'-0"`],
  ])("%d in is %s", (lengthIn, text) => expect(feetInches(lengthIn)).toBe(text));

  it("stays within half a fraction of the length, and never shows 12 inches", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5000, max: 5000, noNaN: true }),
        fc.integer({ min: 1, max: 64 }),
        (lengthIn, parts) => {
          const text = feetInches(lengthIn, parts);
          const [, minus, feet, inches, top = "0", bottom = "1"] = /^(-?)(\d+)'-(\d+)(?: (\d+)\/(\d+))?"$/.exec(text)!;
          expect(Number(inches)).toBeLessThan(12);
          const size = Number(feet) * 12 + Number(inches) + Number(top) / Number(bottom);
          expect(Math.abs((minus ? -size : size) - lengthIn)).toBeLessThanOrEqual(0.5 / parts + 1e-9);
        },
      ),
      { seed: 12 },
    );
  });
});

describe("a length in a unit", () => {
  it("is exact by the inch of 25.4 mm", () => {
    const foot = (unit: keyof typeof LENGTH_UNITS) => lengthInUnit({ lengthIn: 12, unit });
    expect([foot("in"), foot("ft"), foot("mm"), foot("cm"), foot("m")]).toEqual([12, 1, 304.8, 30.48, 0.3048]);
  });

  it("shows a metric size as it was typed, though it is kept to 1e-9 in", () => {
    const keptIn = Math.round((45 / 2.54) * 1e9) / 1e9;
    expect(lengthInUnit({ lengthIn: keptIn, unit: "cm" })).toBe(45);
    expect(lengthInUnit({ lengthIn: keptIn, unit: "mm" })).toBe(450);
    expect(lengthInUnit({ lengthIn: keptIn, unit: "m" })).toBe(0.45);
  });

  it("keeps a 64th of an inch in metres", () => {
    expect(lengthInUnit({ lengthIn: 1 / 64, unit: "m" })).toBeCloseTo(0.000396875, 10);
  });
});
