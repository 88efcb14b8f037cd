import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pieceCount } from "../../../src/math/sawing/piece-count";

const SEED = { seed: 20260101 };

describe("pieces from a depth", () => {
  it("need no kerf under the last", () => {
    expect(pieceCount({ depthIn: 4 * 1.125 + 3 * 0.125, thicknessIn: 1.125, kerfIn: 0.125 })).toBe(4);
    expect(pieceCount({ depthIn: 4.87, thicknessIn: 1.125, kerfIn: 0.125 })).toBe(3);
    expect(pieceCount({ depthIn: 1, thicknessIn: 1.125, kerfIn: 0.125 })).toBe(0);
  });

  it("need a depth and a thickness", () => {
    expect(() => pieceCount({ depthIn: -1, thicknessIn: 1, kerfIn: 0 })).toThrow("depth (in)");
    expect(() => pieceCount({ depthIn: 4, thicknessIn: 0, kerfIn: 0 })).toThrow("thickness (in)");
  });

  it("fill the depth no further than it goes, and waste less than one board and kerf", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4000 }),
        fc.integer({ min: 4, max: 300 }),
        fc.integer({ min: 0, max: 20 }),
        (d, t, k) => {
          const n = pieceCount({ depthIn: d / 32, thicknessIn: t / 32, kerfIn: k / 32 });
          expect(n === 0 || n * t + (n - 1) * k <= d).toBe(true);
          expect((n + 1) * t + n * k > d).toBe(true);
        },
      ),
      SEED,
    );
  });
});
