import { describe, expect, it } from "vitest";
import { surfaceMeasureFt2 } from "../../../src/math/boards/surface-measure";
import { tallyBoardFeet } from "../../../src/math/boards/tally";

const measure = (widthIn: number, lengthFt: number, halves: "down" | "even" = "down") =>
  surfaceMeasureFt2({ widthIn, lengthFt, halves });

describe("a tally", () => {
  const tally = (widths: number[], lengthFt: number, thicknessIn = 1, halves: "down" | "alternate" = "down") =>
    tallyBoardFeet({ boards: widths.map((widthIn) => ({ widthIn, lengthFt })), thicknessIn, halves });

  it("sends exact halves down and up by turns: two boards 8 1/2 in by 12 ft are 8 and 9 (King)", () => {
    expect(tally([8.5, 8.5], 12, 1, "alternate")).toBe(17);
    expect(tally([8.5, 8.5], 12, 1, "down")).toBe(16);
  });

  it("takes turns at exact halves only, in the order of the list", () => {
    expect(tally([8.5], 12, 1, "alternate")).toBe(8);
    expect(tally([8.5, 7.25, 8.75, 8.5, 8.5], 12, 1, "alternate")).toBe(8 + 7 + 9 + 9 + 8);
  });

  it("adds the pieces' whole feet before it multiplies by the thickness", () => {
    expect(tally([6.25, 6.25], 8, 1.25)).toBe((4 + 4) * 1.25);
    expect(tally([6.25, 6.25], 8, 0.75)).toBe(4 + 4);
  });

  it("of one board is its surface measure times its thickness", () => {
    expect(tally([9.25], 13, 2)).toBe(2 * measure(9.25, 13));
  });

  it("of nothing is nothing", () => {
    expect(tally([], 12)).toBe(0);
  });
});
