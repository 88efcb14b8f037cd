import { describe, expect, it } from "vitest";
import type { CutRequest } from "../../../../src/math/sawing/cut-plan/cut-request";
import { kerfGain } from "../../../../src/math/sawing/kerf-gain";
import { pieceCount } from "../../../../src/math/sawing/piece-count";
import { cutYield } from "../../../../src/math/sawing/cut-plan/plan-cut";
import { rowsOf } from "../../../csv";

/*
 * Printed yields, each within a stated band: a plan is the best a log can give, a printed figure is what a rule, a
 * calculation or a mill made of it.
 */

const live = (diameterIn: number, lengthFt: number, kerfIn: number, greenIn: number, more: Partial<CutRequest> = {}) =>
  cutYield({ diameterIn, lengthFt, kerfIn, products: [{ thickness: 1, "green size": greenIn }], ...more });

const diameters = (from: number, to: number, step: number) =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => from + i * step);

const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("the International 1/4 rule on straight sound logs", () => {
  // Table courtesy of G. Wengert, 4 May 2001 (woodweb.com, Log Volume), rounded to 5 board feet. The rule reckons with
  // a 1/4 in kerf, 1/16 in of shrinkage on 1 in boards and 1/2 in of taper in 4 ft, and so do the plans here.
  const cells = rowsOf("logs/international_quarter_wengert2001.csv").filter(({ length_ft }) => Number(length_ft) >= 8);
  const ratios = (from: number) =>
    cells
      .filter(({ diameter_in }) => Number(diameter_in) >= from)
      .map(({ diameter_in, length_ft, bf }) => live(Number(diameter_in), Number(length_ft), 0.25, 1.0625) / Number(bf));

  it("is what live sawing gives from 16 in up, or up to 9 % less: 55 printed cells, 4 % on the average", () => {
    const all = ratios(16);
    expect(all).toHaveLength(55);
    expect(Math.min(...all)).toBeGreaterThan(0.99);
    expect(Math.max(...all)).toBeLessThan(1.09);
    expect(Math.abs(mean(all) - 1.035)).toBeLessThan(0.01);
  });

  it("is up to a fifth less from 10 in up, where its rounding to 5 board feet is up to a tenth", () => {
    const all = ratios(10);
    expect(all).toHaveLength(85);
    expect(Math.min(...all)).toBeGreaterThan(0.99);
    expect(Math.max(...all)).toBeLessThan(1.21);
  });

  it("has about no overrun for 1 in boards, and a thin blade adds about 10 % (G. Wengert, woodweb.com, Log scale and overrun)", () => {
    const logs = cells.filter(({ diameter_in }) => Number(diameter_in) >= 12);
    const total = (kerfIn: number) =>
      logs.reduce(
        (sum, { diameter_in, length_ft }) => sum + live(Number(diameter_in), Number(length_ft), kerfIn, 1.0625),
        0,
      );
    const printed = logs.reduce((sum, { bf }) => sum + Number(bf), 0);
    expect(Math.abs(total(0.25) / printed - 1)).toBeLessThan(0.05);
    const gain = total(0.125) / total(0.25) - 1;
    expect(gain).toBeGreaterThan(0.08);
    expect(gain).toBeLessThan(0.12);
  });
});

describe("a thinner kerf", () => {
  it("gains 0 to 33 %, a little over 7 % on the average, on 5.5 to 12 in logs (Hallock 1962, FPL Report 2254)", () => {
    // 12/32 against 9/32 in. Hallock put some 300 logs together from lumber items; here logs every 1/20 in are planned
    // live for 4/4 and as 4, 6 or 8 in cants with 8/4. The whole range of the report holds; the averages lie between
    // 4 and 8 %, because the best plan already finds with the wide kerf part of what a thin one gains.
    const cant: Partial<CutRequest> = {
      pattern: "cant",
      products: [
        { thickness: 1, "green size": 1.125 },
        { thickness: 2, "green size": 1.875 },
      ],
      settings: { "cant widths": [4, 6, 8] },
    };
    for (const more of [{}, cant])
      for (const length of [8, 16]) {
        const gains = diameters(5.5, 12, 0.05).map(
          (d) => live(d, length, 9 / 32, 1.125, more) / live(d, length, 12 / 32, 1.125, more) - 1,
        );
        expect(Math.min(...gains)).toBeGreaterThan(-1e-9);
        expect(Math.max(...gains)).toBeLessThan(0.33);
        expect(mean(gains)).toBeGreaterThan(0.04);
        expect(mean(gains)).toBeLessThan(0.08);
      }
  });

  it("takes 15.2 in for the 12 boards that took 16.6 in (Wengert 2000, Kerf thickness' effect on yield)", () => {
    // 1 1/8 in boards, 9/32 in kerf against 5/32 in; the depths are printed to a tenth.
    expect(12 * 1.125 + 11 * (9 / 32)).toBeCloseTo(16.6, 1);
    expect(pieceCount({ depthIn: 16.6, thicknessIn: 1.125, kerfIn: 9 / 32 })).toBe(12);
    expect(pieceCount({ depthIn: 16.6 - 0.05, thicknessIn: 1.125, kerfIn: 9 / 32 })).toBe(11);
    expect(pieceCount({ depthIn: 15.2 + 0.05, thicknessIn: 1.125, kerfIn: 5 / 32 })).toBe(12);
    expect(pieceCount({ depthIn: 15.2 - 0.05, thicknessIn: 1.125, kerfIn: 5 / 32 })).toBe(11);
  });

  it("saves about 2.1 % for every 1/32 in, and as much off the thickness (the same page)", () => {
    const logs = diameters(12, 26, 0.25);
    const total = (kerfIn: number, greenIn: number) => logs.reduce((sum, d) => sum + live(d, 12, kerfIn, greenIn), 0);
    const base = total(9 / 32, 1.125);
    // 8.4 % less wood for the same lumber is 1 / (1 - 0.084) - 1 = 9.2 % more lumber from the same wood
    expect(Math.abs(total(5 / 32, 1.125) / base - 1 - 0.092)).toBeLessThan(0.015);
    // from 1 1/8 to 1 1/16 in "nearly 5 %" (Wengert 2004, Five points for efficient sawmilling)
    expect(Math.abs(total(9 / 32, 1.0625) / base - 1 - 0.05)).toBeLessThan(0.01);
  });

  it("never loses on any log", () => {
    for (const diameterIn of diameters(6, 40, 0.7))
      for (const kerfIn of [0.1, 0.17, 0.25]) {
        const gain = kerfGain({ diameterIn, lengthFt: 10, thicknessIn: 1, kerfIn, otherKerfIn: 0.05 });
        expect(gain).toBeGreaterThanOrEqual(0);
        expect(kerfGain({ diameterIn, lengthFt: 10, thicknessIn: 1, kerfIn: 0.05, otherKerfIn: kerfIn })).toBe(gain);
      }
  });
});

describe("quarter-sawing against plain", () => {
  it("gives 12 % less lumber from 23 in logs (Garver and Miller 1933, white oak at seven mills), here 8 to 18 %", () => {
    // The mills quartered more or less fully; the plans quarter all of the log at 45 degrees.
    const share = (d: number) => live(d, 12, 0.1875, 1.125, { pattern: "quarter" }) / live(d, 12, 0.1875, 1.125);
    const less = diameters(22, 24, 0.125).map((d) => 1 - share(d));
    expect(Math.min(...less)).toBeGreaterThan(0.08);
    expect(Math.max(...less)).toBeLessThan(0.2);
    expect(mean(less)).toBeGreaterThan(0.12);
    expect(mean(less)).toBeLessThan(0.18);
  });
});
