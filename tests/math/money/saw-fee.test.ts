import { describe, expect, it } from "vitest";
import { sawFee } from "../../../src/math/money/saw-fee";

describe("a sawing bill", () => {
  const none = { boardFeet: 0, ratePerBoardFoot: 0, hours: 0, hourlyRate: 0, blades: 0, bladeCost: 0 };

  it("adds feet, hours and blades (invented bills)", () => {
    expect(sawFee({ ...none, boardFeet: 312, ratePerBoardFoot: 0.55, blades: 2, bladeCost: 28 })).toBeCloseTo(227.6, 9);
    expect(sawFee({ ...none, hours: 6.5, hourlyRate: 95, blades: 3, bladeCost: 28 })).toBeCloseTo(701.5, 9);
  });

  it("refuses work without a price", () => {
    expect(() => sawFee({ ...none, boardFeet: 312 })).toThrow("board feet: wanted a price for each, got 312");
    expect(() => sawFee({ ...none, hours: 2 })).toThrow("hours: wanted a price");
    expect(() => sawFee({ ...none, blades: 1 })).toThrow("blades: wanted a price");
  });

  it("charges nothing for a price without work", () =>
    expect(sawFee({ ...none, hourlyRate: 95, bladeCost: 28 })).toBe(0));
});
