import { describe, expect, it } from "vitest";
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
