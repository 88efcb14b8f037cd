import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardFeet } from "../../../src/math/boards/board-feet";
import { linearFeet } from "../../../src/math/boards/linear-feet";
import { IN3_PER_BF, IN_PER_FT } from "../../../src/math/units";

const size = fc.double({ min: 0.01, max: 1000, noNaN: true });

describe("board feet", () => {
  it("are 1 for a foot square an inch thick, which is 144 cubic inches (Handbook 130, 2.12)", () => {
    expect(boardFeet({ thicknessIn: 1, widthIn: 12, lengthFt: 1, count: 1 })).toBe(1);
    expect(1 * 12 * IN_PER_FT).toBe(IN3_PER_BF);
  });

  it("count stock under 1 in as 1 in, and stock over it as it is", () => {
    const of = (thicknessIn: number) => boardFeet({ thicknessIn, widthIn: 6, lengthFt: 10, count: 1 });
    expect(of(0.5)).toBe(of(1));
    expect(of(0.999)).toBe(5);
    expect(of(1.001)).toBeGreaterThan(5);
  });

  it("never grow less with a thicker, wider, longer or further board", () => {
    fc.assert(
      fc.property(size, size, size, size, (thicknessIn, widthIn, lengthFt, more) => {
        const board = { thicknessIn, widthIn, lengthFt, count: 1 };
        const feet = boardFeet(board);
        expect(boardFeet({ ...board, thicknessIn: thicknessIn + more })).toBeGreaterThanOrEqual(feet);
        expect(boardFeet({ ...board, widthIn: widthIn + more })).toBeGreaterThanOrEqual(feet);
        expect(boardFeet({ ...board, lengthFt: lengthFt + more })).toBeGreaterThanOrEqual(feet);
        expect(boardFeet({ ...board, count: 2 })).toBe(2 * feet);
      }),
      { seed: 12 },
    );
  });

  it("come back as the running feet of the same board", () => {
    fc.assert(
      fc.property(size, size, size, (thicknessIn, widthIn, lengthFt) => {
        const feet = boardFeet({ thicknessIn, widthIn, lengthFt, count: 1 });
        expect(linearFeet({ boardFeet: feet, thicknessIn, widthIn }) / lengthFt).toBeCloseTo(1, 12);
      }),
      { seed: 12 },
    );
  });

  it("of no width have no running feet", () => {
    expect(() => linearFeet({ boardFeet: 10, thicknessIn: 1, widthIn: 0 })).toThrow("width (in): wanted more than 0");
  });
});
