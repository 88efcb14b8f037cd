import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardFeet } from "../../../src/math/boards/board-feet";
import { linearFeet } from "../../../src/math/boards/linear-feet";
import { packBoardFeet } from "../../../src/math/boards/pack-board-feet";
import { roundBoardFeet } from "../../../src/math/boards/round-board-feet";
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

describe("a bundle", () => {
  const layer = { widthIn: 48, lengthFt: 10, layers: 1, thicknessIn: 1, fillPercent: 100 };

  it("is the board that its layers would make", () => {
    const board = boardFeet({ thicknessIn: 1.25, widthIn: 48, lengthFt: 10, count: 12 });
    expect(packBoardFeet({ ...layer, layers: 12, thicknessIn: 1.25 })).toBeCloseTo(board, 9);
  });

  it("filled to nine tenths holds nine tenths, and is never over full or all but empty", () => {
    expect(packBoardFeet({ ...layer, fillPercent: 90 })).toBeCloseTo(36, 12);
    expect(packBoardFeet({ ...layer, fillPercent: 100 })).toBe(40);
    expect(() => packBoardFeet({ ...layer, fillPercent: 100.1 })).toThrow("wanted 10 to 100, got 100.1");
    expect(packBoardFeet({ ...layer, fillPercent: 10 })).toBeCloseTo(4, 12);
    expect(() => packBoardFeet({ ...layer, fillPercent: 1.1 })).toThrow("wanted 10 to 100, got 1.1"); // 110 % as a share
  });
});

describe("a slice across a log", () => {
  it("a foot and a half round and 2 in thick is pi/4 of the square it is cut from", () => {
    const square = boardFeet({ thicknessIn: 2, widthIn: 18, lengthFt: 1.5, count: 1 });
    const slice = roundBoardFeet({ diameter1In: 18, diameter2In: 18, thicknessIn: 2 });
    expect(slice / square).toBeCloseTo(Math.PI / 4, 12);
  });

  it("that is oval is the same whichever diameter comes first", () => {
    const one = roundBoardFeet({ diameter1In: 30, diameter2In: 24, thicknessIn: 2.5 });
    expect(roundBoardFeet({ diameter1In: 24, diameter2In: 30, thicknessIn: 2.5 })).toBeCloseTo(one, 12);
    expect(one).toBeCloseTo(9.8175, 4);
  });
});
