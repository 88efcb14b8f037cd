import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { beamFitIn } from "../../../src/math/sawing/beam-fit";

describe("a timber out of a round log", () => {
  it.each([
    [{ diameterIn: 10, heightIn: 6, widthIn: 8 }, 0],
    [{ diameterIn: 13, heightIn: 5, widthIn: 12 }, 0],
    [{ diameterIn: 20, heightIn: 8, widthIn: 15 }, 3],
    // By hand: 8 by 8 with 1 in of wane reaches hypot(3, 4) = 5
    [{ diameterIn: 12, heightIn: 8, widthIn: 8, waneIn: 1 }, 2],
    // 4 ft nearer the butt, at half an inch in 4 ft
    [{ diameterIn: 9.5, heightIn: 6, widthIn: 8, lengthFt: 4, taperIn: 0.5 }, 0],
  ])("%j leaves %d in", (beam, spare) => expect(beamFitIn(beam)).toBeCloseTo(spare, 12));

  it("with nothing to spare touches the circle, and no point of its outline lies outside", () => {
    const side = fc.double({ min: 2, max: 16, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.double({ min: 0, max: 0.99, noNaN: true }), (heightIn, widthIn, share) => {
        const waneIn = (share * Math.min(heightIn, widthIn)) / 2;
        const diameterIn = 100 - beamFitIn({ diameterIn: 100, heightIn, widthIn, waneIn });
        let farthest = 0;
        for (let i = 0; i <= 400; i++) {
          const up = (i / 400) * (heightIn / 2);
          const cut = Math.max(0, up - (heightIn / 2 - waneIn));
          farthest = Math.max(farthest, Math.hypot(widthIn / 2 - cut, up));
        }
        expect(farthest).toBeLessThanOrEqual(diameterIn / 2 + 1e-9);
        expect(farthest).toBeGreaterThan(diameterIn / 2 - 0.05);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it("has less to spare the larger it is, and more the more wane may show", () => {
    const spare = (more: object) => beamFitIn({ diameterIn: 12, heightIn: 6, widthIn: 8, ...more });
    expect(spare({ heightIn: 7 })).toBeLessThan(spare({}));
    expect(spare({ waneIn: 0.5 })).toBeGreaterThan(spare({}));
  });

  it("refuses wane of half a side and sizes of nothing", () => {
    expect(() => beamFitIn({ diameterIn: 10, heightIn: 6, widthIn: 8, waneIn: 3 })).toThrow(
      "wanted less than 3, half a side",
    );
    expect(beamFitIn({ diameterIn: 10, heightIn: 6, widthIn: 8, waneIn: 2.999 })).toBeGreaterThan(0);
    expect(() => beamFitIn({ diameterIn: 10, heightIn: 0, widthIn: 8 })).toThrow("height (in): wanted more than 0");
  });
});
