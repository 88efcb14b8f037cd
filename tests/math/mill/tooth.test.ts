import { describe, expect, it } from "vitest";
import { feedForBiteFpm, gulletFillShare, toothBiteIn } from "../../../src/math/mill/tooth";

describe("a tooth", () => {
  it("bites 0.007 in at 40 ft/min of feed, 5,000 of band and 7/8 in of pitch", () => {
    expect(toothBiteIn({ feedFpm: 40, speedFpm: 5000, pitchIn: 0.875 })).toBeCloseTo(0.007, 15);
    expect(feedForBiteFpm({ biteIn: 0.007, speedFpm: 5000, pitchIn: 0.875 })).toBeCloseTo(40, 12);
  });

  it("fills its gullet by bite times depth over the gullet's area, 7/8 x 1/4 / 1.75 = 1/8 in2", () => {
    expect(gulletFillShare({ biteIn: 0.004, depthIn: 12, pitchIn: 0.875, gulletIn: 0.25 })).toBeCloseTo(
      0.048 / 0.125,
      12,
    );
  });

  it("overfills it in a wide cut: 24 in at a bite of 0.007 in is 1.344 of the same gullet", () => {
    expect(gulletFillShare({ biteIn: 0.007, depthIn: 24, pitchIn: 0.875, gulletIn: 0.25 })).toBeCloseTo(1.344, 12);
  });

  it("bites less than its pitch and is fed slower than the band, or the two stand in each other's cells", () => {
    const { feedFpm, speedFpm } = { feedFpm: 40, speedFpm: 5000 };
    expect(toothBiteIn({ feedFpm: 4999, speedFpm, pitchIn: 0.875 })).toBeLessThan(0.875);
    expect(() => toothBiteIn({ feedFpm: speedFpm, speedFpm: feedFpm, pitchIn: 0.875 })).toThrow(
      "feed (ft/min), which is slower than the band: wanted less than 40, got 5000",
    );
    expect(() => feedForBiteFpm({ biteIn: 0.875, speedFpm, pitchIn: 0.007 })).toThrow(
      "bite (in), which is less than from tooth to tooth: wanted less than 0.007, got 0.875",
    );
    expect(() => gulletFillShare({ biteIn: 24, depthIn: 0.007, pitchIn: 0.875, gulletIn: 0.25 })).toThrow("bite (in)");
  });

  it("has no answer on a standing band, without pitch or without gullet", () => {
    expect(() => toothBiteIn({ feedFpm: 40, speedFpm: 0, pitchIn: 0.875 })).toThrow("band speed (ft/min)");
    expect(() => feedForBiteFpm({ biteIn: 0.007, speedFpm: 5000, pitchIn: 0 })).toThrow("tooth pitch (in)");
    expect(() => gulletFillShare({ biteIn: 0.007, depthIn: 24, pitchIn: 0, gulletIn: 0.25 })).toThrow("tooth pitch");
    expect(() => gulletFillShare({ biteIn: 0.007, depthIn: 24, pitchIn: 0.875, gulletIn: 0 })).toThrow("gullet depth");
  });
});
