import { describe, expect, it } from "vitest";
import { kilnDays } from "../../../src/math/drying/kiln-days";
import { redOakTimeConstantDays } from "../../../src/math/drying/time-constant";

const kiln = {
  species: "northern red oak",
  thicknessIn: 1,
  fromPercent: 85,
  toPercent: 25,
  temperatureF: 150,
  humidityPercent: 50,
} as const;

describe("the time constant of red oak", () => {
  it("at 150 °F rests on the vapor pressure that was seen, 191.8 mmHg", () => {
    const perDay = 1 / redOakTimeConstantDays({ thicknessIn: 1, temperatureF: 150 });
    expect((perDay - 0.0575) / 0.00142).toBeCloseTo(191.8, 1);
  });

  it("agrees with a worked example that is itself from memory: 3.03 days, and 4.5 days from 85 to 25 %", () => {
    expect(redOakTimeConstantDays({ thicknessIn: 1, temperatureF: 150 })).toBeCloseTo(3.03, 2);
    expect(kilnDays(kiln)).toBeCloseTo(4.5, 1);
  });

  it("answers for boards from 1/8 to 12 in, and takes 84 typed for 8/4 as a slip", () => {
    const at = (thicknessIn: number) => () => redOakTimeConstantDays({ thicknessIn, temperatureF: 70 });
    expect(at(0.125)()).toBeLessThan(at(12)());
    for (const thicknessIn of [0.124, 12.1, 84])
      expect(at(thicknessIn)).toThrow(`board thickness (in): wanted 0.125 to 12, got ${thicknessIn}`);
  });

  it("grows with the thickness to the power 1.52", () => {
    expect(kilnDays({ ...kiln, thicknessIn: 2 }) / kilnDays(kiln)).toBeCloseTo(2 ** 1.52, 10);
  });
});
