import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { LOG_RULES, type LogRuleName } from "../../../src/math/logs/log-rules";
import { logScaleBoardFeet } from "../../../src/math/logs/log-scale";
import { rowsOf } from "../../csv";
import { answerOrNone } from "../answer-or-none";

const names = Object.keys(LOG_RULES) as LogRuleName[];
const ways = names.flatMap((rule) => (["none", "table"] as const).map((rounding) => ({ rule, rounding })));

/** Logs as they lie in a yard, fractions of an inch and of a foot included. */
const diameters = fc.double({ min: 0.5, max: 120, noNaN: true });
const lengths = fc.double({ min: 0.5, max: 70, noNaN: true });
const SEED = { seed: 20, numRuns: 500 };

describe.each(ways)("$rule, rounding $rounding", ({ rule, rounding }) => {
  const scale = (diameterIn: number, lengthFt: number) =>
    answerOrNone(() => logScaleBoardFeet({ rule, rounding, diameterIn, lengthFt }));

  it("never scales a thicker log less, nor any log below zero", () => {
    fc.assert(
      fc.property(diameters, diameters, lengths, (a, b, length) => {
        const [thin, thick] = [scale(Math.min(a, b), length), scale(Math.max(a, b), length)];
        if (thin === undefined || thick === undefined) return;
        expect(thin).toBeGreaterThanOrEqual(0);
        expect(thick).toBeGreaterThanOrEqual(thin);
      }),
      SEED,
    );
  });

  it("never scales a longer log less", () => {
    fc.assert(
      fc.property(diameters, lengths, lengths, (diameter, a, b) => {
        const [short, long] = [scale(diameter, Math.min(a, b)), scale(diameter, Math.max(a, b))];
        if (short === undefined || long === undefined) return;
        expect(long).toBeGreaterThanOrEqual(short - 1e-9);
      }),
      SEED,
    );
  });

  it("answers or refuses any finite numbers, and never gives NaN or infinity", () => {
    const anyFinite = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(anyFinite, anyFinite, (diameter, length) => {
        const boardFeet = scale(diameter, length);
        expect(boardFeet === undefined || Number.isFinite(boardFeet)).toBe(true);
      }),
      SEED,
    );
  });
});

describe("the ends of each rule", () => {
  it.each<[LogRuleName, number, number]>([
    ["International 1/4", 4, 8],
    ["International 1/8", 4, 8],
    ["Doyle", 4, 8],
    ["Scribner", 4, 40],
    ["Scribner Decimal C", 5.6, 6],
    ["Scribner Decimal C", 20.5, 17.9],
    ["Doyle-Scribner", 4, 40],
    ["Vermont", 1, 12],
    ["Two-thirds", 1, 8],
    ["Inscribed square", 1, 8],
    ["Adirondack", 300, 300],
  ])("%s answers for %d in by %d ft", (rule, diameterIn, lengthFt) => {
    expect(logScaleBoardFeet({ rule, diameterIn, lengthFt })).toBeGreaterThanOrEqual(0);
  });

  it.each<[LogRuleName, number, number, RegExp]>([
    ["International 1/4", 3.9, 8, /wanted 4 to 300, got 3.9/],
    ["International 1/8", 301, 8, /wanted 4 to 300, got 301/],
    ["Doyle", 3.9, 8, /wanted 4 to 300, got 3.9/],
    ["Doyle", 20, 0, /more than 0, up to 300, got 0/],
    ["Scribner", 20, 40.1, /more than 0, up to 40, got 40.1/],
    ["Scribner Decimal C", 5.5, 6, /wanted 6 to 20, got 5.5; the table ends there; the rule "Scribner"/],
    ["Scribner Decimal C", 20.6, 6, /wanted 6 to 20, got 20.6; the table ends there; the rule "Scribner"/],
    ["Scribner Decimal C", 20, 5.9, /wanted 6 to 16, got 5.9/],
    ["Scribner Decimal C", 20, 18, /wanted 6 to 16, got 18; Georgia scales 18 ft or more as two logs/],
    ["Doyle-Scribner", 3, 8, /wanted 4 to 300, got 3/],
    ["Vermont", 12, 12.1, /up to 12, got 12.1; the statute scales a longer log in 12-ft sections/],
    ["Two-thirds", 0.9, 8, /wanted 1 to 300, got 0.9/],
    ["Inscribed square", 0.9, 8, /wanted 1 to 300, got 0.9/],
    ["Adirondack", 0.9, 8, /wanted 1 to 300, got 0.9/],
  ])("%s refuses %d in by %d ft with both limits", (rule, diameterIn, lengthFt, message) => {
    expect(() => logScaleBoardFeet({ rule, diameterIn, lengthFt })).toThrow(NoAnswer);
    expect(() => logScaleBoardFeet({ rule, diameterIn, lengthFt })).toThrow(message);
  });

  it("refuses a log under the first class of a printed table", () => {
    for (const rule of ["Doyle", "International 1/4"] as const) {
      expect(() => logScaleBoardFeet({ rule, rounding: "table", diameterIn: 20, lengthFt: 1.9 })).toThrow(
        "wanted 2 to 300, got 1.9",
      );
      expect(logScaleBoardFeet({ rule, rounding: "table", diameterIn: 20, lengthFt: 2 })).toBeGreaterThan(0);
    }
  });

  it("refuses table rounding where no printed table was seen", () => {
    for (const rule of ["International 1/8", "Scribner", "Doyle-Scribner", "Two-thirds", "Adirondack"] as const)
      expect(() => logScaleBoardFeet({ rule, rounding: "table", diameterIn: 20, lengthFt: 12 })).toThrow(
        "no printed table",
      );
  });
});

describe("between the classes of a printed table", () => {
  const doyle = (diameterIn: number, lengthFt: number) =>
    logScaleBoardFeet({ rule: "Doyle", rounding: "table", diameterIn, lengthFt });

  it("takes the nearest inch, drops an exact half, and cuts the length to even feet", () => {
    expect(doyle(20.5, 12)).toBe(192);
    expect(doyle(20.51, 12)).toBe(217); // 21 in by 12 ft, 216.75
    expect(doyle(19.51, 13.9)).toBe(192);
    expect(doyle(20, 14)).toBe(224);
  });

  it("takes Scribner Decimal C the same way, whatever the rounding asked", () => {
    for (const rounding of ["none", "table"] as const)
      expect(logScaleBoardFeet({ rule: "Scribner Decimal C", rounding, diameterIn: 12.5, lengthFt: 15.9 })).toBe(70);
  });

  it("drops the fraction under half an inch and counts the one over, as Vermont's statute says", () => {
    const vermont = (diameterIn: number) =>
      logScaleBoardFeet({ rule: "Vermont", rounding: "table", diameterIn, lengthFt: 12 });
    expect(vermont(19.6)).toBe(200);
    expect(vermont(20.4)).toBe(200);
  });
});

describe("the other rules", () => {
  const scale = (rule: LogRuleName, diameterIn: number, lengthFt: number) =>
    logScaleBoardFeet({ rule, diameterIn, lengthFt });

  it("Vermont is half the square of the diameter for 12 ft", () => {
    const rows = rowsOf("logs/GENERATED_vermont_rule_12ft.csv");
    expect(rows).toHaveLength(37);
    for (const row of rows)
      for (const lengthFt of [8, 10, 12])
        expect(scale("Vermont", Number(row.diameter_in), lengthFt)).toBeCloseTo(Number(row[`bf_${lengthFt}ft`]), 3);
  });

  it("five Adirondack markets of 19 in by 13 ft are a thousand board feet", () => {
    expect(5 * scale("Adirondack", 19, 13)).toBeCloseTo(1000, 9);
  });

  it("two thirds of 18 in is a 12-in square timber, 12 board feet a foot", () => {
    expect(scale("Two-thirds", 18, 10)).toBe(120);
  });

  it("the square in a 17-in log is 12 in on a side, but for a hair", () => {
    // the old rule of thumb: 17 in round squares 12; 17 / sqrt 2 = 12.02
    expect(scale("Inscribed square", 17, 12)).toBeCloseTo(144.5, 9);
  });

  it("Doyle-Scribner is Doyle to 28 in and Scribner from 29, in whole inches", () => {
    expect(scale("Doyle-Scribner", 28.5, 16)).toBe(scale("Doyle", 28, 16));
    expect(scale("Doyle-Scribner", 28.6, 16)).toBe(scale("Scribner", 29, 16));
  });

  it("Doyle passes Scribner by formula between 24 and 25 in", () => {
    expect(scale("Doyle", 24, 16)).toBeLessThan(scale("Scribner", 24, 16));
    expect(scale("Doyle", 25, 16)).toBeGreaterThan(scale("Scribner", 25, 16));
  });
});
