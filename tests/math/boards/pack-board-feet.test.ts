import { describe, expect, it } from "vitest";
import { boardFeet } from "../../../src/math/boards/board-feet";
import { packBoardFeet } from "../../../src/math/boards/pack-board-feet";

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
