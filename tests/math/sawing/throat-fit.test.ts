import { describe, expect, it } from "vitest";
import { biggestLogIn, throatFitIn } from "../../../src/math/sawing/throat-fit";

describe("room in the mill", () => {
  it("goes by the large end of a straight log", () => {
    expect(throatFitIn({ throatIn: 40, smallIn: 16, largeIn: 20, lengthFt: 12 })).toBe(20);
    expect(throatFitIn({ throatIn: 30, smallIn: 28, largeIn: 33, lengthFt: 10 })).toBe(-3);
    expect(throatFitIn({ throatIn: 33, smallIn: 28, largeIn: 33, lengthFt: 10 })).toBe(0);
  });

  it("leaves the room asked for beside the log", () => {
    expect(throatFitIn({ throatIn: 40, smallIn: 16, largeIn: 20, lengthFt: 12, clearanceIn: 3 })).toBe(17);
  });

  it("is what a walk along the bowed log finds, inch by inch", () => {
    for (const [smallIn, largeIn, sweepIn] of [
      [16, 20, 2],
      [16, 20, 0.1],
      [20, 20, 5],
      [12, 30, 1],
    ] as const) {
      let widest = 0;
      for (let x = 0; x <= 1; x += 1 / 4096)
        widest = Math.max(widest, 4 * sweepIn * x * (1 - x) + (smallIn + (largeIn - smallIn) * x) / 2 + largeIn / 2);
      expect(throatFitIn({ throatIn: 50, smallIn, largeIn, lengthFt: 12, sweepIn })).toBeCloseTo(50 - widest, 5);
    }
  });

  it("needs 21.125 in, not 22, for a 16 to 20 in log with 2 in of sweep", () => {
    expect(throatFitIn({ throatIn: 21.125, smallIn: 16, largeIn: 20, lengthFt: 12, sweepIn: 2 })).toBeCloseTo(0, 12);
  });

  it("keeps the customary foot over the biggest log, or what is asked for", () => {
    expect(biggestLogIn({ throatIn: 84 })).toBe(72);
    expect(biggestLogIn({ throatIn: 84, clearanceIn: 4 })).toBe(80);
    expect(() => biggestLogIn({ throatIn: 12 })).toThrow("wanted more than 12, got 12");
  });

  it("refuses a log the wrong way round and a sweep that is no log's", () => {
    expect(() => throatFitIn({ throatIn: 30, smallIn: 20, largeIn: 19, lengthFt: 8 })).toThrow("large end");
    expect(() => throatFitIn({ throatIn: 30, smallIn: 20, largeIn: 20, lengthFt: 8, sweepIn: 25 })).toThrow("sweep");
    const log = { throatIn: 30, smallIn: 18, largeIn: 20, lengthFt: 8 };
    expect(() => throatFitIn({ ...log, throatIn: 0 })).toThrow("opening of the mill (in)");
    expect(() => throatFitIn({ ...log, smallIn: 0 })).toThrow("small end (in)");
    expect(() => throatFitIn({ ...log, lengthFt: 0 })).toThrow("length (ft)");
    expect(() => throatFitIn({ ...log, clearanceIn: -1 })).toThrow("clearance (in)");
  });
});
