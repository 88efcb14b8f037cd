import { describe, expect, it } from "vitest";
import { chainCentersIn, chainLinks, chainSpeedFpm, sprocketDiameterIn } from "../../../src/math/mill/chain";

describe("a roller chain", () => {
  it("of 1/2 in on 17 and 65 teeth at 15 in takes 104 links (Mott 4e, Example 7-3)", () => {
    expect(chainLinks({ teeth1: 17, teeth2: 65, centersIn: 15, pitchIn: 0.5 })).toBe(104);
  });

  it("on 21 and 63 teeth at 500 mm, 12.7 mm pitch, is 121.875 pitches (Bhandari, Example 14.3), 122 links", () => {
    const asked = { teeth1: 21, teeth2: 63, centersIn: 500, pitchIn: 12.7 };
    expect(chainLinks({ ...asked, rounding: "none" })).toBeCloseTo(121.875, 2);
    expect(chainLinks(asked)).toBe(122);
  });

  it("on equal sprockets is two straights and one round", () => {
    expect(chainLinks({ teeth1: 20, teeth2: 20, centersIn: 20, pitchIn: 0.5, rounding: "none" })).toBe(100);
    expect(chainLinks({ teeth1: 20, teeth2: 20, centersIn: 20, pitchIn: 0.5 })).toBe(100);
    expect(chainLinks({ teeth1: 20, teeth2: 20, centersIn: 20.01, pitchIn: 0.5 })).toBe(102);
  });

  it("may have an odd count of links when the centers are asked for", () => {
    expect(chainCentersIn({ teeth1: 20, teeth2: 20, links: 101, pitchIn: 0.5 })).toBeCloseTo(20.25, 12);
  });

  it("of 18 teeth, 1/2 in, at 60 rpm runs 45 ft/min: 9 in a turn, 540 in a minute", () => {
    expect(chainSpeedFpm({ teeth: 18, pitchIn: 0.5, rpm: 60 })).toBe(45);
  });

  it("has no answer where the sprockets overlap, or with too few links to go round them", () => {
    const touching =
      (sprocketDiameterIn({ teeth: 17, pitchIn: 0.5 }) + sprocketDiameterIn({ teeth: 65, pitchIn: 0.5 })) / 2;
    expect(chainLinks({ teeth1: 17, teeth2: 65, centersIn: touching, pitchIn: 0.5 })).toBeGreaterThan(0);
    expect(() => chainLinks({ teeth1: 17, teeth2: 65, centersIn: touching - 0.001, pitchIn: 0.5 })).toThrow(
      "centers (in), from where the sprockets touch",
    );
    const fewest = chainLinks({ teeth1: 17, teeth2: 65, centersIn: touching, pitchIn: 0.5, rounding: "none" });
    expect(() => chainCentersIn({ teeth1: 17, teeth2: 65, links: Math.floor(fewest), pitchIn: 0.5 })).toThrow(
      `wanted ${Number(fewest.toPrecision(6))} or more`,
    );
  });

  it("runs on no sprocket of fewer than 3 teeth", () => {
    expect(sprocketDiameterIn({ teeth: 3, pitchIn: 0.5 })).toBeCloseTo(0.57735, 5);
    expect(() => sprocketDiameterIn({ teeth: 2, pitchIn: 0.5 })).toThrow("sprocket teeth: wanted 3 or more, got 2");
  });
});
