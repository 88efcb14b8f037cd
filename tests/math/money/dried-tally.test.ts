import { describe, expect, it } from "vitest";
import { driedBoardFeet } from "../../../src/math/money/dried-tally";

describe("feet after the kiln", () => {
  it("are less by the shrinkage (1000 green are 930 at 7 %, Atherholt)", () => {
    expect(driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 7 })).toBeCloseTo(930, 9);
    expect(driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 0 })).toBe(1000);
    expect(() => driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 100 })).toThrow("wanted less than 100");
  });
});
