import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breretonVolume } from "../../../src/math/logs/brereton";
import { coneVolume, huberVolume, newtonVolume, smalianVolume } from "../../../src/math/logs/cubic";
import { CUBIC_UNITS, inCubicUnit, type CubicUnit } from "../../../src/math/logs/cubic-unit";
import { hoppusVolume } from "../../../src/math/logs/hoppus";
import { jasCubicMeters } from "../../../src/math/logs/jas";
import { CM_PER_IN, M_PER_FT } from "../../../src/math/units";
import { rowsOf } from "../../csv";

/** Square feet in a circle of one inch, as Briggs prints it. */
const F = 0.005454;

describe("the four volume formulas", () => {
  /** Briggs 1994, Table 2-1, as printed. */
  const BRIGGS: Record<string, (ds: number, dm: number, dl: number, L: number) => number> = {
    smalian: (ds, _dm, dl, L) => (F * (ds ** 2 + dl ** 2) * L) / 2,
    huber: (_ds, dm, _dl, L) => F * dm ** 2 * L,
    newton: (ds, dm, dl, L) => (F * (ds ** 2 + 4 * dm ** 2 + dl ** 2) * L) / 6,
    two_end_conic: (ds, _dm, dl, L) => (F * (ds ** 2 + ds * dl + dl ** 2) * L) / 3,
  };
  const OURS: Record<string, (smallIn: number, middleIn: number, largeIn: number, lengthFt: number) => number> = {
    smalian: (smallIn, _, largeIn, lengthFt) => smalianVolume({ smallIn, largeIn, lengthFt }),
    huber: (_, middleIn, __, lengthFt) => huberVolume({ middleIn, lengthFt }),
    newton: (smallIn, middleIn, largeIn, lengthFt) => newtonVolume({ smallIn, middleIn, largeIn, lengthFt }),
    two_end_conic: (smallIn, _, largeIn, lengthFt) => coneVolume({ smallIn, largeIn, lengthFt }),
  };

  it("are those of Briggs's table; its Sorenson, subneiloid and Bruce are not offered", () => {
    const printed = rowsOf("logs/cubic_formulas_briggs_table2_1.csv").map(({ name }) => name);
    expect(printed.filter((name) => !(name! in OURS))).toEqual(["bruce_butt_log", "sorenson", "subneiloid"]);
    expect(Object.keys(OURS).filter((name) => !printed.includes(name))).toEqual([]);
  });

  it.each(Object.keys(OURS))("%s agrees with the printed formula to the four digits of its 0.005454", (name) => {
    const logs: [number, number, number, number][] = [
      [12, 14, 16, 16],
      [20, 21, 25, 8.5],
      [30, 30, 30, 12],
    ];
    for (const sizes of logs) expect(OURS[name]!(...sizes) / BRIGGS[name]!(...sizes)).toBeCloseTo(1, 4);
  });

  it("agree on a cylinder, and Newton with the cone on a straight taper", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 40, noNaN: true }),
        (a, b, lengthFt) => {
          const [smallIn, largeIn] = [Math.min(a, b), Math.max(a, b)];
          const cylinder = huberVolume({ middleIn: smallIn, lengthFt });
          expect(smalianVolume({ smallIn, largeIn: smallIn, lengthFt })).toBeCloseTo(cylinder, 8);
          expect(coneVolume({ smallIn, largeIn: smallIn, lengthFt })).toBeCloseTo(cylinder, 8);
          const middleIn = (smallIn + largeIn) / 2;
          const cone = coneVolume({ smallIn, largeIn, lengthFt });
          expect(newtonVolume({ smallIn, middleIn, largeIn, lengthFt })).toBeCloseTo(cone, 6);
          expect(smalianVolume({ smallIn, largeIn, lengthFt })).toBeGreaterThanOrEqual(cone - 1e-9);
          expect(huberVolume({ middleIn, lengthFt })).toBeLessThanOrEqual(cone + 1e-9);
        },
      ),
      { seed: 3, numRuns: 300 },
    );
  });

  it("refuse a butt thinner than the top, and a middle outside the ends, with both limits", () => {
    const thin = { smallIn: 16, largeIn: 12, lengthFt: 16 };
    for (const volume of [smalianVolume, coneVolume, breretonVolume])
      expect(() => volume(thin)).toThrow("wanted 16 to 300, got 12");
    expect(() => newtonVolume({ smallIn: 12, middleIn: 17, largeIn: 16, lengthFt: 16 })).toThrow(
      "wanted 12 to 16, got 17",
    );
    expect(() => newtonVolume({ ...thin, middleIn: 14 })).toThrow("wanted 16 to 300, got 12");
    expect(() => huberVolume({ middleIn: 0, lengthFt: 16 })).toThrow("wanted 0.1 to 300, got 0");
    expect(() => huberVolume({ middleIn: 12, lengthFt: 301 })).toThrow("up to 300, got 301");
    expect(() => hoppusVolume({ girthIn: 943, lengthFt: 16 })).toThrow("girth (in): wanted 0 to 942, got 943");
  });
});

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

describe("the Japanese agricultural standard", () => {
  const jas = (cm: number, m: number) => jasCubicMeters({ diameterIn: cm / CM_PER_IN, lengthFt: m / M_PER_FT });

  it.each(rowsOf("logs/GENERATED_jas_vectors.csv"))(
    "$measured_cm cm by $length_m m is $v_3dp m3, by the traders' formula",
    ({ measured_cm, length_m, v_3dp }) => {
      expect(jas(Number(measured_cm), Number(length_m))).toBe(Number(v_3dp));
    },
  );

  it("goes by whole centimeters under 14, by even ones from there", () => {
    expect(jas(13.99, 4)).toBe(jas(13, 4));
    expect(jas(15.99, 4)).toBe(jas(14, 4));
    expect(jas(13, 4)).toBeGreaterThan(jas(12, 4));
  });

  it("answers from 1 cm, and not under it", () => {
    expect(jas(1, 4)).toBeGreaterThanOrEqual(0);
    expect(() => jas(0.9, 4)).toThrow("JAS diameter (whole cm): wanted 1 or more, got 0");
  });
});
