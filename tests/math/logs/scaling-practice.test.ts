import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netScaleBoardFeet, overrunPercent } from "../../../src/math/logs/net-scale";
import { scaleLengthFt } from "../../../src/math/logs/scale-length";
import { diameterAtIn, girthDiameterIn, scalingDiameterIn } from "../../../src/math/logs/scaling-diameter";

describe("the scaling diameter", () => {
  const readings = [20, 21]; // an exact half
  it.each([
    ["none", 20.5],
    ["nearest", 20],
    ["nearest up", 21],
    ["down", 20],
  ] as const)("of 20 and 21 in, rounded %s, is %d", (rounding, expected) => {
    expect(scalingDiameterIn({ diametersIn: readings, rounding })).toBe(expected);
  });

  it("off the half, nearest is nearest and down is down", () => {
    const diametersIn = [20, 21.6]; // 20.8
    expect(scalingDiameterIn({ diametersIn, rounding: "nearest" })).toBe(21);
    expect(scalingDiameterIn({ diametersIn, rounding: "nearest up" })).toBe(21);
    expect(scalingDiameterIn({ diametersIn, rounding: "down" })).toBe(20);
  });

  it("is unrounded when nothing is asked, from any number of readings", () => {
    expect(scalingDiameterIn({ diametersIn: [19, 20, 22.5] })).toBe(20.5);
    expect(scalingDiameterIn({ diametersIn: [19] })).toBe(19);
    expect(() => scalingDiameterIn({ diametersIn: [] })).toThrow("at least one reading");
    expect(() => scalingDiameterIn({ diametersIn: [20, 301] })).toThrow("wanted 0 to 300, got 301");
  });
});

describe("a diameter from the girth", () => {
  it("is the girth over pi less the bark on both sides", () => {
    expect(girthDiameterIn({ girthIn: 24 * Math.PI })).toBeCloseTo(24, 9);
    expect(girthDiameterIn({ girthIn: 24 * Math.PI, barkIn: 0.75 })).toBeCloseTo(22.5, 9);
  });

  it("refuses bark that fills the log, and no girth at all", () => {
    expect(() => girthDiameterIn({ girthIn: 12, barkIn: 2 })).toThrow("bark thickness (in)");
    expect(() => girthDiameterIn({ girthIn: 0 })).toThrow("girth (in): wanted more than 0, got 0");
    expect(() => girthDiameterIn({ girthIn: 1000 })).toThrow("girth (in)");
  });
});

describe("a diameter along the log", () => {
  const log = { smallIn: 16, largeIn: 20, lengthFt: 16 };
  it.each([
    [0, 16],
    [4, 17],
    [8, 18],
    [16, 20],
  ])("%d ft from the small end it is %d in", (distanceFt, expected) => {
    expect(diameterAtIn({ ...log, distanceFt })).toBe(expected);
  });

  it("ends with the log", () => {
    expect(() => diameterAtIn({ ...log, distanceFt: 16.1 })).toThrow("wanted 0 to 16, got 16.1");
    expect(() => diameterAtIn({ ...log, largeIn: 15, distanceFt: 8 })).toThrow("wanted 16 to 300, got 15");
  });
});

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

describe("the net scale", () => {
  it("takes off board feet and shares of the gross", () => {
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [32, 0.1] })).toBe(238);
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [] })).toBe(300);
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [2] })).toBe(298);
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [300] })).toBe(0);
  });

  it("takes 1 for neither one board foot nor 100 %, and says what to give for a log lost whole", () => {
    const of = (deduction: number) => netScaleBoardFeet({ grossBf: 300, deductions: [deduction] });
    expect(() => of(1)).toThrow(/one board foot or 100 %; for a log lost whole give its gross scale/);
    expect(of(0.999)).toBeCloseTo(0.3, 9);
    expect(of(1.001)).toBeCloseTo(298.999, 9);
  });

  it("refuses more defect than log, never a negative board foot", () => {
    expect(() => netScaleBoardFeet({ grossBf: 300, deductions: [200, 150] })).toThrow(
      "wanted 0 to 300, the gross scale, got 350",
    );
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 2000, noNaN: true }), { maxLength: 5 }),
        (grossBf, deductions) => {
          try {
            const net = netScaleBoardFeet({ grossBf, deductions });
            expect(net >= 0 && net <= grossBf).toBe(true);
          } catch (error) {
            expect(String(error)).toContain("the gross scale");
          }
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe("overrun", () => {
  it("is 0 when the tally meets the scale, minus when it is under", () => {
    expect(overrunPercent({ sawnBf: 200, scaledBf: 200 })).toBe(0);
    expect(overrunPercent({ sawnBf: 150, scaledBf: 200 })).toBe(-25);
  });

  it("refuses a scale of nothing", () => {
    expect(overrunPercent({ sawnBf: 1, scaledBf: 1 })).toBe(0);
    expect(() => overrunPercent({ sawnBf: 100, scaledBf: 0 })).toThrow("scaled (bf): wanted 1 to 1000000000, got 0");
  });
});
