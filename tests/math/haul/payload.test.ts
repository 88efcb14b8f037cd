import { describe, expect, it } from "vitest";
import { payloadLeftLb } from "../../../src/math/haul/payload";

describe("payload", () => {
  it("is the plate's rating less the empty weight and what is aboard", () => {
    expect(payloadLeftLb({ ratingLb: 14000, emptyLb: 4200, weightsLb: [3100, 2650] })).toBe(4050);
  });

  it("of an unloaded trailer is all that its rating leaves", () => {
    expect(payloadLeftLb({ ratingLb: 14000, emptyLb: 4200 })).toBe(9800);
    expect(payloadLeftLb({ ratingLb: 14000, emptyLb: 4200, weightsLb: [] })).toBe(9800);
  });

  it("runs below zero when the trailer is overloaded", () => {
    expect(payloadLeftLb({ ratingLb: 7000, emptyLb: 2100, weightsLb: [3100, 2650] })).toBe(-850);
  });
});
