import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardCost } from "../../../src/math/money/board-cost";
import { breakEvenFeet } from "../../../src/math/money/break-even-feet";
import { driedBoardFeet } from "../../../src/math/money/dried-tally";
import { haulCostPerFoot } from "../../../src/math/money/haul-cost";
import { hourlyRate } from "../../../src/math/money/hourly-rate";
import { logBid } from "../../../src/math/money/log-bid";
import { listPrice, marginShare } from "../../../src/math/money/price-and-margin";
import { sawFee } from "../../../src/math/money/saw-fee";

const log = { logCost: 120, haul: 60, hours: 3, ratePerHour: 40, drying: 60, boardFeet: 400, wastePercent: 0 };

describe("cost of a board foot", () => {
  it("is all the money over all the feet", () => expect(boardCost(log)).toBe((120 + 60 + 120 + 60) / 400));

  it("rises when a tenth of the feet is waste", () =>
    expect(boardCost({ ...log, wastePercent: 10 })).toBeCloseTo(1, 12));

  it("falls by a removal fee, even under nothing", () => {
    expect(boardCost({ ...log, logCost: -640 })).toBe(-1);
  });

  it("has no answer when all is waste or nothing was sawn", () => {
    expect(boardCost({ ...log, wastePercent: 99 })).toBeCloseTo(90, 9);
    expect(() => boardCost({ ...log, wastePercent: 100 })).toThrow("waste (percent): wanted less than 100, got 100");
    expect(() => boardCost({ ...log, boardFeet: 0 })).toThrow("board feet: wanted more than 0");
  });

  it("leaves no hour out for want of its rate", () => {
    expect(() => boardCost({ ...log, ratePerHour: 0 })).toThrow("hours: wanted a price for each, got 3 and no price");
    expect(boardCost({ ...log, hours: 0 })).toBe((120 + 60 + 60) / 400);
  });
});

describe("a margin", () => {
  it("is on the price: a markup of 40 % is a margin of 28.6 %", () => {
    expect(marginShare({ price: 1.4, cost: 1 })).toBeCloseTo(0.286, 3);
    expect(listPrice({ cost: 1, marginPercent: 40 })).toBeCloseTo(1.667, 3);
  });

  it("comes back from the price it made", () => {
    const cost = fc.double({ min: 0.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(cost, fc.double({ min: 0, max: 99, noNaN: true }), (cost, marginPercent) => {
        const price = listPrice({ cost, marginPercent });
        expect(marginShare({ price, cost }) * 100).toBeCloseTo(marginPercent, 8);
      }),
      { seed: 12 },
    );
  });

  it("of 100 % or more has no price, and of 0 is the cost", () => {
    expect(listPrice({ cost: 6, marginPercent: 0 })).toBe(6);
    expect(listPrice({ cost: 6, marginPercent: 99.9 })).toBeCloseTo(6000, 6);
    for (const marginPercent of [100, 150])
      expect(() => listPrice({ cost: 6, marginPercent })).toThrow(`wanted less than 100, got ${marginPercent}`);
  });

  it("is below 0 when sold at a loss", () => expect(marginShare({ price: 8, cost: 10 })).toBe(-0.25));
});

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

describe("feet after the kiln", () => {
  it("are less by the shrinkage (1000 green are 930 at 7 %, Atherholt)", () => {
    expect(driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 7 })).toBeCloseTo(930, 9);
    expect(driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 0 })).toBe(1000);
    expect(() => driedBoardFeet({ greenBoardFeet: 1000, shrinkagePercent: 100 })).toThrow("wanted less than 100");
  });
});

describe("hauling, an hour and the fixed cost", () => {
  it("hauling is spread over the feet brought home", () => {
    const load = { miles: 60, costPerMile: 1.5, hours: 3, ratePerHour: 30, boardFeet: 600 };
    expect(haulCostPerFoot(load)).toBeCloseTo(0.3, 12);
    expect(() => haulCostPerFoot({ ...load, boardFeet: 0 })).toThrow("board feet: wanted more than 0");
    expect(() => haulCostPerFoot({ ...load, costPerMile: 0 })).toThrow("miles: wanted a price for each, got 60");
    expect(() => haulCostPerFoot({ ...load, ratePerHour: 0 })).toThrow("hours: wanted a price for each, got 3");
  });

  it("an hour earns its part of the fixed cost, its own cost and its wage", () => {
    expect(hourlyRate({ fixedCost: 12000, hours: 600, variablePerHour: 15, wagePerHour: 40 })).toBe(75);
    expect(() => hourlyRate({ fixedCost: 12000, hours: 0, variablePerHour: 15, wagePerHour: 40 })).toThrow("hours");
  });

  it("the fixed cost is earned when the feet left over pay for it", () => {
    const feet = breakEvenFeet({ fixedCost: 12000, pricePerFoot: 4, variablePerFoot: 1 });
    expect(feet * (4 - 1)).toBe(12000);
    for (const variablePerFoot of [4, 5])
      expect(() => breakEvenFeet({ fixedCost: 1, pricePerFoot: 4, variablePerFoot })).toThrow("every foot loses money");
  });
});
