import { describe, expect, it } from "vitest";
import { ramForceLbf, ramPressurePsi } from "../../../src/math/mill/ram";

describe("a hydraulic ram", () => {
  it("of 3 in bore and 1 7/8 in rod at 800 psi pushes 5654.9 and pulls 3445.9 lbf", () => {
    expect(ramForceLbf({ pressurePsi: 800, boreIn: 3 })).toBeCloseTo(5654.9, 1);
    expect(ramForceLbf({ pressurePsi: 800, boreIn: 3, rodIn: 1.875 })).toBeCloseTo(3445.9, 1);
  });

  it("wants more pressure to pull than to push", () => {
    const push = ramPressurePsi({ forceLbf: 2500, boreIn: 2 });
    expect(push).toBeCloseTo(2500 / Math.PI, 9);
    expect(ramPressurePsi({ forceLbf: 2500, boreIn: 2, rodIn: 1 })).toBeCloseTo((push * 4) / 3, 9);
  });

  it("has no answer without a bore, nor with a rod as thick as the bore", () => {
    expect(() => ramPressurePsi({ forceLbf: 2500, boreIn: 0 })).toThrow("ram bore (in): wanted more than 0, got 0");
    expect(() => ramForceLbf({ pressurePsi: 800, boreIn: 2, rodIn: 2 })).toThrow("less than the bore, 2, got 2");
    expect(ramForceLbf({ pressurePsi: 800, boreIn: 2, rodIn: 1.999 })).toBeGreaterThan(0);
  });
});
