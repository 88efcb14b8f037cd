import { describe, expect, it } from "vitest";
import { isExactHalf, nearestWholeFoot } from "../../../src/math/boards/whole-feet";

describe("a half foot", () => {
  it("is known as one, and nothing else is", () => {
    expect([0.5, 8.5, 100.5].map(isExactHalf)).toEqual([true, true, true]);
    expect([0, 8.49, 8.51, 9].map(isExactHalf)).toEqual([false, false, false, false]);
  });

  it("goes the way it is sent", () => {
    expect(nearestWholeFoot(8.5, "down")).toBe(8);
    expect(nearestWholeFoot(8.5, "up")).toBe(9);
  });
});
