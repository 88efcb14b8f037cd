import { describe, expect, it } from "vitest";
import { logBid } from "../../../src/math/money/log-bid";
import { marginShare } from "../../../src/math/money/price-and-margin";

describe("a bid", () => {
  it("leaves exactly the margin when the log is bought for it", () => {
    const bid = logBid({ yieldBoardFeet: 300, price: 5, costs: 600, marginPercent: 20 });
    const costPerFoot = (bid + 600) / 300;
    expect(marginShare({ price: 5, cost: costPerFoot })).toBeCloseTo(0.2, 12);
  });

  it("is below 0 when the costs are more than the sales: be paid at least that to take the log", () => {
    expect(logBid({ yieldBoardFeet: 100, price: 4, costs: 450, marginPercent: 0 })).toBe(-50);
  });

  it("has no answer for a margin of all the sales", () => {
    expect(() => logBid({ yieldBoardFeet: 100, price: 4, costs: 0, marginPercent: 100 })).toThrow(
      "margin on the sales",
    );
  });
});
