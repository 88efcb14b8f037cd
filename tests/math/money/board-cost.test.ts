import { describe, expect, it } from "vitest";
import { boardCost } from "../../../src/math/money/board-cost";

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
