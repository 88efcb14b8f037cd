import { describe, expect, it } from "vitest";
import { cutWidthIn } from "../../../src/math/sawing/cut-width";

describe("width of a cut", () => {
  it("is the chord of Machinery's Handbook 31, page 79: 59.86 in for a radius of 60 in at a height of 8 in", () => {
    // The handbook cuts 59.8665 off rather than rounding it, so the tolerance is one of its last digits.
    expect(Math.abs(cutWidthIn({ diameterIn: 120, depthIn: 8 }) - 59.86)).toBeLessThan(0.01);
  });

  it("is the whole diameter in the middle and nothing at top and bottom", () => {
    expect(cutWidthIn({ diameterIn: 20, depthIn: 10 })).toBe(20);
    expect(cutWidthIn({ diameterIn: 20, depthIn: 0 })).toBe(0);
    expect(cutWidthIn({ diameterIn: 20, depthIn: 20 })).toBe(0);
    expect(() => cutWidthIn({ diameterIn: 20, depthIn: 20.01 })).toThrow("wanted 0 to 20, got 20.01");
    expect(() => cutWidthIn({ diameterIn: 0, depthIn: 0 })).toThrow("diameter (in)");
  });
});
