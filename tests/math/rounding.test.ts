import { describe, expect, it } from "vitest";
import { downTo, nearest, nearestHalfDown, toDecimals, upTo } from "../../src/math/rounding";

describe("rounding to a step", () => {
  it("goes down, up and to the nearest", () => {
    expect([downTo(2, 15.9), upTo(2, 14.1), nearest(5, 12.6), nearestHalfDown(1, 14.6)]).toEqual([14, 16, 15, 15]);
    expect([downTo(2, 14), upTo(2, 14), nearest(5, 15), nearestHalfDown(1, 14)]).toEqual([14, 14, 15, 14]);
  });

  it("takes an exact half up, or down where that is asked", () => {
    expect(nearest(1, 20.5)).toBe(21);
    expect(nearestHalfDown(1, 20.5)).toBe(20);
    expect(toDecimals(2, 0.125)).toBe(0.13);
  });

  it("takes a whole number and a half that came through metric for what they are", () => {
    for (let halves = 1; halves <= 400; halves++) {
      const size = halves / 2;
      const throughMetric = ((size * 0.3048) / 0.3048 / 3) * 3;
      for (const given of [throughMetric, size - 1e-9, size + 1e-9]) {
        expect(downTo(0.5, given)).toBe(size);
        expect(upTo(0.5, given)).toBe(size);
        expect(nearest(1, given)).toBe(Math.floor(size + 0.5));
        expect(nearestHalfDown(1, given)).toBe(Math.ceil(size - 0.5));
      }
    }
  });

  it("leaves no minus nought", () => {
    expect(nearestHalfDown(1, 0.4)).toBe(0);
    expect(upTo(1, 0)).toBe(0);
  });
});
