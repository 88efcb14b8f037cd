import { describe, expect, it } from "vitest";
import { rimRpm, rimSpeedFpm, rimStressPsi } from "../../../src/math/mill/rim";

describe("the speed of a rim", () => {
  it("a foot across is pi feet a turn", () => {
    expect(rimSpeedFpm({ diameterIn: 12, rpm: 1 })).toBe(Math.PI);
  });

  it("has no answer for a wheel of nothing", () => {
    expect(() => rimRpm({ diameterIn: 0, speedFpm: 5000 })).toThrow("wheel diameter (in)");
  });
});

describe("a steel rim", () => {
  it("reaches 20,000 psi at 435.04 ft/s of rim (Singer, Problem 139): 4.8 ft across at 1,731 rpm", () => {
    // 435.04 x 60 / (4.8 pi) = 1,730.98 rpm; the book's g of 32.2 is 0.08 % above standard gravity.
    const rpm = (435.04 * 60) / (Math.PI * 4.8);
    expect(rimStressPsi({ diameterIn: 4.8 * 12, rpm }) * (32.17405 / 32.2)).toBeCloseTo(20000, -1);
  });

  it("bears four times the stress at twice the turns or twice the size", () => {
    const once = rimStressPsi({ diameterIn: 36, rpm: 530 });
    expect(rimStressPsi({ diameterIn: 36, rpm: 1060 })).toBeCloseTo(4 * once, 9);
    expect(rimStressPsi({ diameterIn: 72, rpm: 530 })).toBeCloseTo(4 * once, 9);
  });
});
