import { describe, expect, it } from "vitest";
import { deviation, fittedLine, mean, sum, sumOf, turnBetween } from "../../src/math/numbers";

describe("the small sums", () => {
  it("add up, and are 0 of nothing", () => {
    expect(sum([1, 2, 3.5])).toBe(6.5);
    expect(sum([])).toBe(0);
    expect(sumOf(["a", "bcd"], ({ length }) => length)).toBe(4);
    expect(mean([2, 4, 9])).toBe(5);
  });

  it("deviate by the root of the squares about the mean over one less than their count", () => {
    // about the mean of 5: 9 + 1 + 16 = 26, over 2
    expect(deviation([2, 4, 9])).toBeCloseTo(Math.sqrt(13), 15);
  });

  it("have their line of least squares, worked by hand on three points off a line", () => {
    // about the means 2 and 4: (-2)(-3) + 0 + (2)(1) = 8 over 8
    expect(fittedLine([0, 2, 4], [1, 6, 5])).toEqual({ slope: 1, meanX: 2, meanY: 4, squaresOfX: 8 });
  });
});

describe("a search by halving", () => {
  it("ends between two neighbours, of which one is too low and the other is not", () => {
    const [low, high] = turnBetween(0, 2, (x) => x * x < 2);
    expect(low * low).toBeLessThan(2);
    expect(high * high).toBeGreaterThanOrEqual(2);
    expect((low + high) / 2 === low || (low + high) / 2 === high).toBe(true);
  });

  it("comes to its end where the turn is at an end of the range", () => {
    expect(turnBetween(0, 1, () => true)[1]).toBe(1);
    expect(turnBetween(0, 1, () => false)[0]).toBe(0);
  });
});
