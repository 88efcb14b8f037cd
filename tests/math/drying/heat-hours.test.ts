import { describe, expect, it } from "vitest";
import { heatHours } from "../../../src/math/drying/heat-hours";
import { NoAnswer } from "../../../src/math/errors";

describe("the hours to heat a timber through", () => {
  const timber = { sizeIn: 8, startF: 50, chamberF: 160, wetBulbF: 152 };

  it("lie between those of the printed neighbors", () => {
    const between = heatHours({ ...timber, sizeIn: 7, startF: 55, wetBulbF: 151 }) * 60;
    expect(between).toBeGreaterThan(460); // 6 in, 60 °F, 8 °F under
    expect(between).toBeLessThan(841); // 8 in, 50 °F, 10 °F under
  });

  it.each([
    ["size", "sizeIn", [6, 8, 10]],
    ["starting temperature", "startF", [50]],
    ["wet bulb", "wetBulbF", [152, 154]],
  ] as const)("come without a step to those of a printed %s from either side", (_, what, printedValues) => {
    for (const value of printedValues)
      for (const near of [value - 1e-9, value + 1e-9])
        expect(heatHours({ ...timber, [what]: near })).toBeCloseTo(heatHours({ ...timber, [what]: value }), 8);
  });

  it.each([
    ["size (in): wanted 4 to 12, got 3.9", { sizeIn: 3.9 }],
    ["size (in): wanted 4 to 12, got 12.1", { sizeIn: 12.1 }],
    ["wanted 40 to 60, got 39", { startF: 39 }],
    ["wanted 40 to 60, got 61", { startF: 61 }],
    ["wanted 159.5 to 160.5, got 170", { chamberF: 170, wetBulbF: 162 }],
    ["wanted 159.5 to 160.5, got 159.4", { chamberF: 159.4 }],
    ["wanted 159.5 to 160.5, got 160.6", { chamberF: 160.6 }],
    ["depression (°F): wanted 2 to 12, got 13", { wetBulbF: 147 }],
    ["depression (°F): wanted 2 to 12, got 1", { wetBulbF: 159 }],
    ["wanted more than 133, got 130", { wetBulbF: 130 }],
    ["no figure seen in Table 20-8 for 12 in, 60 °F", { sizeIn: 12, startF: 60, wetBulbF: 150 }],
    ["no figure seen in Table 20-8 for 8 in, 60 °F", { startF: 55, wetBulbF: 148 }],
  ])("has no answer outside the table: %s", (message, change) => {
    expect(() => heatHours({ ...timber, ...change })).toThrow(NoAnswer);
    expect(() => heatHours({ ...timber, ...change })).toThrow(message);
  });

  it("are the table's in a chamber read as 71 °C, and never shorter within half a degree", () => {
    const seventyOneC = 71 * 1.8 + 32;
    expect(heatHours({ ...timber, chamberF: seventyOneC })).toBe(heatHours(timber));
    for (const chamberF of [159.5, 160.5])
      expect(heatHours({ ...timber, chamberF })).toBeGreaterThanOrEqual(heatHours(timber));
  });

  it("answer at the table's corners", () => {
    expect(heatHours({ ...timber, sizeIn: 4, startF: 40, wetBulbF: 158 }) * 60).toBeCloseTo(225, 6);
    expect(heatHours({ ...timber, sizeIn: 12, startF: 50, wetBulbF: 148 }) * 60).toBeCloseTo(1697, 6);
  });
});
