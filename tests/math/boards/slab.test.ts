import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  SLAB_METHODS as METHODS,
  type SlabMethod as Method,
  slabAreaFt2,
  slabBoardFeet,
} from "../../../src/math/boards/slab";

const feetBy = (method: Method, widthsIn: number[], thicknessIn = 1, lengthFt = 12) =>
  slabBoardFeet({ thicknessIn, widthsIn, lengthFt, method });

const widths = fc.array(fc.double({ min: 1, max: 80, noNaN: true }), { minLength: 1, maxLength: 15 });

describe("the customs of measuring a slab, on one that is 12 ft long and 1 in thick so that the feet are the width", () => {
  const invented = [30, 24, 21, 20, 25];

  it("mean is the average of all readings", () => expect(feetBy("mean", invented)).toBeCloseTo(120 / 5, 12));
  it("middle is the reading at half length", () => expect(feetBy("middle", invented)).toBeCloseTo(21, 12));
  it("narrow is the least reading", () => expect(feetBy("narrow", invented)).toBeCloseTo(20, 12));
  it("third lies four thirds of a step in from the narrower end, between 20 and 21", () =>
    expect(feetBy("third", invented)).toBeCloseTo(20 + 1 / 3, 12));
  it("simpson weighs the readings 1 4 2 4 1", () =>
    expect(feetBy("simpson", invented)).toBeCloseTo((30 + 4 * 24 + 2 * 21 + 4 * 20 + 25) / 12, 12));

  it("differ by a fifth", () => expect(feetBy("mean", invented) / feetBy("narrow", invented)).toBeCloseTo(1.2, 12));
});

describe("a slab", () => {
  it("with parallel edges measures the same by every custom, and as a board", () => {
    for (const method of METHODS) expect(feetBy(method, [20, 20, 20], 2, 9)).toBeCloseTo(30, 12);
  });

  it("on a straight taper has its middle, its mean and its Simpson alike", () => {
    for (const method of ["mean", "middle", "simpson"] as const)
      expect(feetBy(method, [14, 16, 18, 20, 22])).toBeCloseTo(18, 12);
    expect(feetBy("third", [14, 16, 18, 20, 22])).toBeCloseTo(14 + 8 / 3, 12);
  });

  it("with edges that are parabolas has exactly its true area by Simpson's rule", () => {
    const widthAt = (x: number) => 20 + 6 * x + 9 * x * x;
    const trueMean = 20 + 6 / 2 + 9 / 3;
    expect(feetBy("simpson", [0, 0.25, 0.5, 0.75, 1].map(widthAt))).toBeCloseTo(trueMean, 12);
  });

  it("read at an even number of places has its middle between the two middle readings", () => {
    expect(feetBy("middle", [30, 24, 20, 26])).toBeCloseTo(22, 12);
  });

  it("with one reading measures by that, except by Simpson's rule", () => {
    for (const method of ["mean", "middle", "narrow", "third"] as const) expect(feetBy(method, [18])).toBe(18);
    expect(() => feetBy("simpson", [18])).toThrow("got 1");
  });

  it("needs an odd number of readings, 3 or more, for Simpson's rule", () => {
    expect(feetBy("simpson", [20, 18, 16])).toBeCloseTo(18, 12);
    for (const count of [1, 2, 4, 6])
      expect(() => feetBy("simpson", Array<number>(count).fill(20))).toThrow(
        `Simpson's rule: wanted an odd number of widths, 3 or more, got ${count}`,
      );
  });

  it("without readings has no answer", () => {
    for (const method of METHODS) expect(() => feetBy(method, [])).toThrow("wanted 1 or more, got 0");
    expect(() => slabAreaFt2({ widthsIn: [], lengthFt: 10 })).toThrow("wanted 1 or more, got 0");
  });

  it("third follows the narrower end even where the slab bulges behind it", () => {
    expect(feetBy("third", [20, 30, 28, 22])).toBe(30);
    expect(feetBy("third", [22, 28, 30, 20])).toBe(30);
  });

  it("with both ends alike takes the narrower of its two thirds", () => {
    expect(feetBy("third", [24, 20, 22, 24])).toBe(20);
  });

  it("measures the same from either end", () => {
    fc.assert(
      fc.property(widths, (widthsIn) => {
        for (const method of METHODS.filter(
          (name) => name !== "simpson" || (widthsIn.length > 2 && widthsIn.length % 2),
        ))
          expect(feetBy(method, [...widthsIn].reverse())).toBeCloseTo(feetBy(method, widthsIn), 9);
      }),
      { seed: 12 },
    );
  });

  it("measures between its least and its greatest reading by every custom that reads a width", () => {
    fc.assert(
      fc.property(widths, (widthsIn) => {
        for (const method of ["mean", "middle", "narrow", "third"] as const) {
          expect(feetBy(method, widthsIn)).toBeGreaterThanOrEqual(Math.min(...widthsIn) - 1e-9);
          expect(feetBy(method, widthsIn)).toBeLessThanOrEqual(Math.max(...widthsIn) + 1e-9);
        }
      }),
      { seed: 12 },
    );
  });

  it("has its mean board feet in its face area times its thickness", () => {
    expect(slabAreaFt2({ widthsIn: [30, 24, 21, 20, 25], lengthFt: 10 }) * 2.25).toBeCloseTo(
      feetBy("mean", [30, 24, 21, 20, 25], 2.25, 10),
      12,
    );
  });
});
