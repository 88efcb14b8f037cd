import { describe, expect, it } from "vitest";
import { boardFeet } from "../../../src/math/boards/board-feet";
import { roundBoardFeet } from "../../../src/math/boards/round-board-feet";

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
