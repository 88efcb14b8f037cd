import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netScaleBoardFeet, overrunPercent } from "../../../src/math/logs/net-scale";

describe("the net scale", () => {
  it("takes off board feet and shares of the gross", () => {
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [32, 0.1] })).toBe(238);
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [] })).toBe(300);
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [2] })).toBe(298);
    expect(netScaleBoardFeet({ grossBf: 300, deductions: [300] })).toBe(0);
  });

  it("takes 1 for neither one board foot nor 100 %, and says what to give for a log lost whole", () => {
    const of = (deduction: number) => netScaleBoardFeet({ grossBf: 300, deductions: [deduction] });
    expect(() => of(1)).toThrow(/one board foot or 100 %; for a log lost whole give its gross scale/);
    expect(of(0.999)).toBeCloseTo(0.3, 9);
    expect(of(1.001)).toBeCloseTo(298.999, 9);
  });

  it("refuses more defect than log, never a negative board foot", () => {
    expect(() => netScaleBoardFeet({ grossBf: 300, deductions: [200, 150] })).toThrow(
      "wanted 0 to 300, the gross scale, got 350",
    );
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 2000, noNaN: true }), { maxLength: 5 }),
        (grossBf, deductions) => {
          try {
            const net = netScaleBoardFeet({ grossBf, deductions });
            expect(net >= 0 && net <= grossBf).toBe(true);
          } catch (error) {
            expect(String(error)).toContain("the gross scale");
          }
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe("overrun", () => {
  it("is 0 when the tally meets the scale, minus when it is under", () => {
    expect(overrunPercent({ sawnBf: 200, scaledBf: 200 })).toBe(0);
    expect(overrunPercent({ sawnBf: 150, scaledBf: 200 })).toBe(-25);
  });

  it("refuses a scale of nothing", () => {
    expect(overrunPercent({ sawnBf: 1, scaledBf: 1 })).toBe(0);
    expect(() => overrunPercent({ sawnBf: 100, scaledBf: 0 })).toThrow("scaled (bf): wanted 1 to 1000000000, got 0");
  });
});
