import { describe, expect, it } from "vitest";
import { inchesText, quartersText } from "../../src/math/inches-text";

describe("a size as it is read off a tape", () => {
  it.each([
    [14.75, "14-3/4"],
    [0.03125, "1/32"],
    [6, "6"],
    [0, "0"],
    [29 + 27 / 64, "29-27/64"],
    [-0.125, "-1/8"],
    [-2, "-2"],
    [-1.5, "-1-1/2"],
  ])("%s in is %s", (sizeIn, text) => {
    expect(inchesText(sizeIn)).toBe(text);
  });

  it("is written in three decimals where it is no whole 64th", () => {
    expect(inchesText(1.1)).toBe("1.1");
    expect(inchesText(2.00045)).toBe("2");
    expect(inchesText(-0.3339)).toBe("-0.334");
  });
});

describe("a thickness by the trade's name", () => {
  it("is in quarters, or in inches where it is no whole quarter", () => {
    expect(quartersText(1.25)).toBe("5/4");
    expect(quartersText(1.125)).toBe("1-1/8 in");
  });
});
