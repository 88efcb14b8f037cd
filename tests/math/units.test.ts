import { describe, expect, it } from "vitest";
import { breretonVolume } from "../../src/math/logs/brereton";
import { registry } from "../../src/functions/registry";
import * as units from "../../src/math/units";

const KINDS = {
  LENGTHS: units.LENGTHS,
  VOLUMES: units.VOLUMES,
  WEIGHTS: units.WEIGHTS,
  SPEEDS: units.SPEEDS,
  FORCES: units.FORCES,
  STRESSES: units.STRESSES,
  POWERS: units.POWERS,
};

describe("the units", () => {
  it.each(Object.entries(KINDS))("of %s have each spelling once", (_, kind) => {
    const spellings = Object.entries(kind).flatMap(([name, { also }]) => [name.toLowerCase(), ...also]);
    expect(new Set(spellings).size).toBe(spellings.length);
  });

  // From memory: the factors as NIST Special Publication 811, appendix B.8, is remembered to print them. Its page was not
  // at hand, so they guard against a slip of the keys and are no published check.
  it.each<[string, Record<string, units.Unit>, string, string, number, number]>([
    ["a foot is 0.3048 m", units.LENGTHS, "ft", "m", 0.3048, 1e-12],
    ["a cubic foot is 2.831685 E-02 m3", units.VOLUMES, "ft3", "m3", 0.02831685, 5e-9],
    ["a board foot is 2.359737 E-03 m3", units.VOLUMES, "board feet", "m3", 0.002359737, 5e-10],
    ["an ounce is 2.834952 E-02 kg", units.WEIGHTS, "oz", "kg", 0.02834952, 5e-9],
    ["a foot a minute is 5.08 E-03 m/s", units.SPEEDS, "ft/min", "m/s", 0.00508, 1e-12],
    ["a kilogram-force is 9.80665 N", units.FORCES, "kgf", "N", 9.80665, 1e-11],
    ["a pound-force is 4.448222 N", units.FORCES, "lbf", "N", 4.448222, 5e-7],
    ["a psi is 6.894757 kPa", units.STRESSES, "psi", "kPa", 6.894757, 5e-7],
    ["a horsepower of 550 ft lbf/s is 745.6999 W", units.POWERS, "hp", "W", 745.6999, 5e-5],
  ])("%s", (_, kind, one, other, factor, within) => {
    expect(Math.abs(kind[one]!.holds / kind[other]!.holds - factor)).toBeLessThanOrEqual(within);
  });
});

describe("a unit that is asked for", () => {
  const SIZES = [[[12]], [[16]], [[16]]];
  it.each(["SMALIAN", "CONEVOLUME", "BRERETON"])("is spelled alike for %s", (name) => {
    const volume = (unit: string) => registry[name]!(...SIZES, [[unit]])[0]![0];
    for (const spelling of ["cubic metres", "Cubic Meters", "m³", "cu m"]) expect(volume(spelling)).toBe(volume("m3"));
    for (const spelling of ["cubic feet", "cu ft", "ft^3"]) expect(volume(spelling)).toBe(volume("ft3"));
  });

  it("holds for Brereton what the table of units says", () => {
    const log = { smallIn: 12, largeIn: 16, lengthFt: 16 };
    const inFt3 = breretonVolume({ ...log, unit: "ft3" });
    for (const unit of ["board feet", "m3"] as const)
      expect(breretonVolume({ ...log, unit })).toBeCloseTo(inFt3 / units.VOLUMES[unit].holds, 9);
  });
});
