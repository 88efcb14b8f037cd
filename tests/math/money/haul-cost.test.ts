import { describe, expect, it } from "vitest";
import { breakEvenFeet } from "../../../src/math/money/break-even-feet";
import { haulCostPerFoot } from "../../../src/math/money/haul-cost";
import { hourlyRate } from "../../../src/math/money/hourly-rate";

describe("hauling, an hour and the fixed cost", () => {
  it("hauling is spread over the feet brought home", () => {
    const load = { miles: 60, costPerMile: 1.5, hours: 3, ratePerHour: 30, boardFeet: 600 };
    expect(haulCostPerFoot(load)).toBeCloseTo(0.3, 12);
    expect(() => haulCostPerFoot({ ...load, boardFeet: 0 })).toThrow("board feet: wanted more than 0");
    expect(() => haulCostPerFoot({ ...load, costPerMile: 0 })).toThrow("miles: wanted a price for each, got 60");
    expect(() => haulCostPerFoot({ ...load, ratePerHour: 0 })).toThrow("hours: wanted a price for each, got 3");
  });

  it("an hour earns its part of the fixed cost, its own cost and its wage", () => {
    expect(hourlyRate({ fixedCost: 12000, hours: 600, variablePerHour: 15, wagePerHour: 40 })).toBe(75);
    expect(() => hourlyRate({ fixedCost: 12000, hours: 0, variablePerHour: 15, wagePerHour: 40 })).toThrow("hours");
  });

  it("the fixed cost is earned when the feet left over pay for it", () => {
    const feet = breakEvenFeet({ fixedCost: 12000, pricePerFoot: 4, variablePerFoot: 1 });
    expect(feet * (4 - 1)).toBe(12000);
    for (const variablePerFoot of [4, 5])
      expect(() => breakEvenFeet({ fixedCost: 1, pricePerFoot: 4, variablePerFoot })).toThrow("every foot loses money");
  });
});
