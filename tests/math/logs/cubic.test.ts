import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breretonVolume } from "../../../src/math/logs/brereton";
import { coneVolume, huberVolume, newtonVolume, smalianVolume } from "../../../src/math/logs/cubic";
import { hoppusVolume } from "../../../src/math/logs/hoppus";
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
