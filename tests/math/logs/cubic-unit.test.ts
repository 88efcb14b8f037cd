import { describe, expect, it } from "vitest";
import { huberVolume, smalianVolume } from "../../../src/math/logs/cubic";
import { CUBIC_UNITS, inCubicUnit, type CubicUnit } from "../../../src/math/logs/cubic-unit";
import { hoppusVolume } from "../../../src/math/logs/hoppus";

describe("units", () => {
  it.each<[CubicUnit, number, string]>([
    ["ft3", 89.6, "itself"],
    ["m3", 2.5372, "1 m3 is 35.315 ft3 (UNECE/FAO 2009)"],
    ["hoppus ft", 70.372, "1 hoppus ft is 1.27324 ft3"],
    ["cord", 1, "128 ft3 of stack (NIST Handbook 130), 0.70 of it wood (RVR)"],
    ["cunit", 0.896, "100 ft3 of wood"],
  ])("89.6 ft3 in %s is %d: %s", (unit, expected) => {
    expect(inCubicUnit(89.6, unit)).toBeCloseTo(expected, 3);
  });

  it("every unit can be asked of every formula", () => {
    for (const unit of Object.keys(CUBIC_UNITS) as CubicUnit[]) {
      const ft3 = smalianVolume({ smallIn: 12, largeIn: 16, lengthFt: 16 });
      expect(smalianVolume({ smallIn: 12, largeIn: 16, lengthFt: 16, unit })).toBeCloseTo(inCubicUnit(ft3, unit), 9);
    }
  });

  it("50 hoppus feet are a hoppus ton, 1.8027 m3; a hoppus foot of a true cylinder is pi / 4 of its own", () => {
    expect(50 * hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "m3" })).toBeCloseTo(1.8027, 3);
    const ft3 = huberVolume({ middleIn: 20, lengthFt: 10 });
    expect(hoppusVolume({ girthIn: 20 * Math.PI, lengthFt: 10, unit: "ft3" })).toBeCloseTo(ft3, 9);
  });
});
