import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gostCubicMeters } from "../../../src/math/logs/gost";
import { GOST_2708_75 } from "../../../src/math/logs/gost.table";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";
import { answerOrNone } from "../answer-or-none";
import { cellsOf, expectSaid, metric, missesOf } from "./printed-cells";

const checked = printedValuesOf("GOST 2708-75");

const gost = (cm: number, m: number) => gostCubicMeters(metric(cm, m));

describe("GOST 2708-75, as printed", () => {
  const rows = rowsOf("logs/gost_2708_75_table.csv");
  const cells = cellsOf("logs/gost_2708_75_table.csv", "volume_m3", "top_diameter_cm", "length_m");
  const placesOf = (status: string) =>
    rows.filter((row) => row.status!.startsWith(status)).map((row) => `${row.top_diameter_cm} x ${row.length_m}`);
  const interpolated = placesOf("interpolated");
  const inStandard = cells.filter(({ at }) => !interpolated.includes(at));

  it("gives every cell that stands in the reprints", () => {
    checked(inStandard.length);
    expect(missesOf(inStandard, gost)).toEqual({});
    const witnessed = placesOf("ok").length;
    expectSaid(
      "gost.ts",
      `${inStandard.length} of ${inStandard.length} cells seen (${witnessed} of them in two reprints or more)`,
    );
    expect(GOST_2708_75.flatMap(({ volumes }) => volumes)).toHaveLength(inStandard.length);
  });

  it("refuses the one cell on which reprints differ", () => {
    expect(placesOf("conflict")).toEqual(["36 x 9.0"]);
    checked();
    expect(() => gost(36, 9)).toThrow("1.18 and 1.13");
  });

  it("leaves out the odd diameters from 15 cm: a reprinter's means of their even neighbors", () => {
    const printed = new Map(inStandard.map((cell) => [`${cell.diameter} x ${cell.length}`, cell.printed]));
    const odd = cells.filter((cell) => !inStandard.includes(cell));
    expect(odd).toHaveLength(88);
    checked(odd.length);
    for (const { diameter, length, printed: volume } of odd) {
      const mean = (printed.get(`${diameter - 1} x ${length}`)! + printed.get(`${diameter + 1} x ${length}`)!) / 2;
      // the reprinter cuts the third decimal now and then instead of rounding it
      expect(Math.abs(mean - volume), `${diameter} x ${length}`).toBeLessThanOrEqual(0.00051);
      expect(gost(diameter, length)).toBe(gost(diameter - 1, length));
    }
  });
});

describe("GOST 2708-75, of a log", () => {
  it("takes the diameter down to the printed class and the length down to tenths of a meter", () => {
    expect(gost(25.9, 6)).toBe(gost(24, 6));
    expect(gost(13.9, 6)).toBe(gost(13, 6));
    expect(gost(24, 6.09)).toBe(gost(24, 6));
  });

  it("goes on a straight line between printed lengths, with the decimals the table has there", () => {
    expect(gost(14, 3.2)).toBe(0.056); // between 0.052 and 0.061 m3, 3.0 and 3.5 m
    expect(gost(24, 9.5)).toBe(0.59); // between 0.55 and 0.63 m3, 9 and 10 m
  });

  it("never falls with diameter or length", () => {
    const sizes = fc.tuple(fc.double({ min: 10, max: 39.9, noNaN: true }), fc.double({ min: 1, max: 11, noNaN: true }));
    fc.assert(
      fc.property(sizes, sizes, ([d1, l1], [d2, l2]) => {
        const less = answerOrNone(() => gost(Math.min(d1, d2), Math.min(l1, l2)));
        const more = answerOrNone(() => gost(Math.max(d1, d2), Math.max(l1, l2)));
        if (less !== undefined && more !== undefined) expect(more).toBeGreaterThanOrEqual(less);
      }),
      { seed: 9, numRuns: 2000 },
    );
  });

  it("ends where the reprints end, and says both limits", () => {
    expect(gost(10, 3)).toBe(0.026);
    expect(gost(39.9, 11)).toBe(1.73);
    expect(() => gost(9.9, 3)).toThrow("down to the printed class (cm): wanted 10 to 38, got 9");
    expect(() => gost(40, 3)).toThrow("down to the printed class (cm): wanted 10 to 38, got 40");
    expect(() => gost(10, 2.9)).toThrow("GOST 2708-75 length (m) at 10 cm: wanted 3 to 8, got 2.9");
    expect(() => gost(20, 9.1)).toThrow("wanted 1 to 9, got 9.1");
    expect(() => gost(36, 9.5)).toThrow("wanted up to 8.5 or from 10");
  });
});
