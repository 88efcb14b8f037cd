import { describe, expect, it } from "vitest";
import { breretonVolume } from "../../../src/math/logs/brereton";
import { huberVolume } from "../../../src/math/logs/cubic";
import { CM_PER_IN, M_PER_FT } from "../../../src/math/units";

describe("Brereton", () => {
  it("counts 12 board feet in each cubic foot of the cylinder of the mean diameter", () => {
    const mean = huberVolume({ middleIn: 24, lengthFt: 16 });
    expect(breretonVolume({ smallIn: 23, largeIn: 25, lengthFt: 16 })).toBeCloseTo(12 * mean, 9);
    expect(breretonVolume({ smallIn: 23, largeIn: 25, lengthFt: 16, unit: "ft3" })).toBeCloseTo(mean, 9);
  });

  it.each([
    [60, 60, 12.1, 3.393], // the importer's figure for 60 cm by 12 m
    [61, 62.9, 12.29, 3.393], // 61.95 cm down to 60; 12.19 m down to 12.1, down to 12.0
    [60, 60, 12.09, 3.336], // 11.99 m down to 11.8: 0.2827 x 11.8
  ])("by the customs, %d and %d cm by %d m is %d m3", (small, large, length, expected) => {
    const sizes = { smallIn: small / CM_PER_IN, largeIn: large / CM_PER_IN, lengthFt: length / M_PER_FT };
    expect(breretonVolume({ ...sizes, unit: "m3", rounding: "customs" })).toBeCloseTo(expected, 9);
  });

  it("by the customs, refuses what their cuts leave nothing of", () => {
    const sizes = { smallIn: 1 / CM_PER_IN, largeIn: 2 / CM_PER_IN, lengthFt: 10 };
    expect(() => breretonVolume({ ...sizes, rounding: "customs" })).toThrow(
      "mean diameter by the customs (cm): wanted 2 or more, got 0",
    );
    expect(() => breretonVolume({ smallIn: 20, largeIn: 20, lengthFt: 0.8, rounding: "customs" })).toThrow(
      "wanted 0.2 or more",
    );
  });
});
