import { describe, expect, it } from "vitest";
import { pulleyRpm, pulleySizeIn, pulleyTrainRpm } from "../../../src/math/mill/pulleys";

describe("pulleys", () => {
  it("of two drives that slip 2.5 % each turn at 1901.25 rpm (textbook exercise on two stages)", () => {
    const drives = [
      { driverIn: 80, drivenIn: 40 },
      { driverIn: 100, drivenIn: 20 },
    ];
    expect(pulleyTrainRpm({ rpm: 200, drives, slipPercent: 2.5 })).toBeCloseTo(1901.25, 9);
  });

  it("of no drive at all leave the speed as it is", () => {
    expect(pulleyTrainRpm({ rpm: 1750, drives: [] })).toBe(1750);
  });

  it("turn slower the more the belt slips", () => {
    const at = (slipPercent: number) => pulleyRpm({ rpm: 1750, driverIn: 6, drivenIn: 12, slipPercent });
    expect(at(0)).toBe(875);
    expect(at(2)).toBeLessThan(at(1));
    expect(at(20)).toBeCloseTo(700, 9);
  });

  it("have no answer for a belt that slips by more than a fifth, nor by less than nothing, and say how to write one percent", () => {
    const slipping = (slipPercent: number) => () => pulleyRpm({ rpm: 1750, driverIn: 6, drivenIn: 12, slipPercent });
    expect(slipping(100)).toThrow("belt slip (%): wanted 0 to 20, got 100; one percent is written 1%");
    expect(slipping(20.1)).toThrow("wanted 0 to 20, got 20.1");
    expect(slipping(-0.1)).toThrow("wanted 0 to 20, got -0.1");
    expect(() => pulleySizeIn({ rpm: 1750, driverIn: 6, wantedRpm: 500, slipPercent: 100 })).toThrow("belt slip");
  });

  it("have no answer over zero", () => {
    expect(() => pulleyRpm({ rpm: 1750, driverIn: 6, drivenIn: 0 })).toThrow("driven pulley (in): wanted more than 0");
    expect(() => pulleySizeIn({ rpm: 1750, driverIn: 6, wantedRpm: 0 })).toThrow("wanted speed (rpm)");
  });
});
