import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandLengthIn, beltCentersIn, beltLengthIn, beltWrapDegrees } from "../../../src/math/mill/belt";

/** The short form of the handbooks, 2 C + pi/2 (D + d) + (D -+ d)^2 / 4 C. */
function shortForm(large: number, small: number, centers: number, crossed: boolean): number {
  const offset = crossed ? large + small : large - small;
  return 2 * centers + (Math.PI / 2) * (large + small) + offset ** 2 / (4 * centers);
}

describe("a belt", () => {
  it("over 18 and 6 in at 96 in wraps 3.016511 and 3.266674 rad (Shigley, chapter 17)", () => {
    const small = (beltWrapDegrees({ pulley1In: 18, pulley2In: 6, centersIn: 96 }) * Math.PI) / 180;
    expect(small).toBeCloseTo(3.016511, 6);
    expect(2 * Math.PI - small).toBeCloseTo(3.266674, 6);
  });

  it("over 640 and 480 mm at 3 m is 7761.4 mm open by the short form (class notes), which is as good there", () => {
    expect(beltLengthIn({ pulley1In: 640, pulley2In: 480, centersIn: 3000 })).toBeCloseTo(7761.4, 1);
  });

  it.each([
    [18, 6, 96, 0.0001, 0.002],
    [24, 6, 24, 0.04, 0.35],
    [20, 5, 13, 0.13, 1.44],
  ])(
    "over %s and %s at %s is longer than the short form by %s open, %s crossed",
    (large, small, centers, open, cross) => {
      const exact = (crossed: boolean) =>
        beltLengthIn({ pulley1In: large, pulley2In: small, centersIn: centers, crossed });
      // What the short form lacks was worked out apart from this code, to the digits shown.
      expect(exact(false) - shortForm(large, small, centers, false)).toBeCloseTo(open, open < 0.001 ? 4 : 2);
      expect(exact(true) - shortForm(large, small, centers, true)).toBeCloseTo(cross, cross < 0.01 ? 3 : 2);
    },
  );

  it("over equal pulleys is a circle and two straights, crossed or not told apart by which pulley comes first", () => {
    expect(beltLengthIn({ pulley1In: 10, pulley2In: 10, centersIn: 30 })).toBeCloseTo(10 * Math.PI + 60, 12);
    expect(beltWrapDegrees({ pulley1In: 10, pulley2In: 10, centersIn: 30 })).toBe(180);
    for (const crossed of [false, true])
      expect(beltLengthIn({ pulley1In: 4, pulley2In: 9, centersIn: 30, crossed })).toBe(
        beltLengthIn({ pulley1In: 9, pulley2In: 4, centersIn: 30, crossed }),
      );
  });

  it("crossed over touching pulleys follows both circles, a figure of eight", () => {
    expect(beltLengthIn({ pulley1In: 9, pulley2In: 4, centersIn: 6.5, crossed: true })).toBeCloseTo(13 * Math.PI, 12);
  });

  it("goes round pulleys that touch, and has no answer for pulleys that overlap", () => {
    expect(beltLengthIn({ pulley1In: 18, pulley2In: 6, centersIn: 12 })).toBeGreaterThan(0);
    for (const crossed of [false, true])
      expect(() => beltLengthIn({ pulley1In: 18, pulley2In: 6, centersIn: 11.999, crossed })).toThrow(
        "centers (in), from where the pulleys touch: wanted 12 or more, got 11.999",
      );
    expect(() => beltLengthIn({ pulley1In: 18, pulley2In: 6, centersIn: 6 })).toThrow("wanted 12 or more");
    expect(() => beltWrapDegrees({ pulley1In: 18, pulley2In: 6, centersIn: 5 })).toThrow("wanted 12 or more");
    expect(() => bandLengthIn({ wheel1In: 36, wheel2In: 36, centersIn: 35.9 })).toThrow("wanted 36 or more");
  });

  it("too short to go round touching pulleys finds no centers, and says what is long enough", () => {
    const shortest = beltLengthIn({ pulley1In: 18, pulley2In: 6, centersIn: 12 });
    expect(beltCentersIn({ pulley1In: 18, pulley2In: 6, beltIn: shortest })).toBeCloseTo(12, 9);
    expect(() => beltCentersIn({ pulley1In: 18, pulley2In: 6, beltIn: shortest - 0.001 })).toThrow(
      `wanted ${Number(shortest.toPrecision(6))} or more`,
    );
  });

  it("needs more length the farther the shafts stand apart", () => {
    const size = fc.double({ min: 1, max: 60, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, fc.boolean(), (pulley1In, pulley2In, apart, more, crossed) => {
        const centersIn = (pulley1In + pulley2In) / 2 + apart;
        const near = beltLengthIn({ pulley1In, pulley2In, centersIn, crossed });
        expect(beltLengthIn({ pulley1In, pulley2In, centersIn: centersIn + more, crossed })).toBeGreaterThan(near);
      }),
      { seed: 17, numRuns: 300 },
    );
  });

  it("is a band on wheels: pi D + 2 C on equal ones", () => {
    expect(bandLengthIn({ wheel1In: 36, wheel2In: 36, centersIn: 100 })).toBeCloseTo(36 * Math.PI + 200, 12);
  });
});
