import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestOfAll, bestWhereShorterIsWider } from "../../../../src/math/sawing/cut-plan/best-length";

/** Lengths of 12 ft down to 4 ft by the foot, a board foot to the inch of width. */
const BY_THE_FOOT = [12, 11, 10, 9, 8, 7, 6, 5, 4];

describe("the best length of a board", () => {
  it("is the longest of those that give as much: 10 ft of 6 in before 6 ft of 10 in", () => {
    const widths = [0, 0, 6, 6, 6, 6, 10, 10, 10];
    expect(bestOfAll(BY_THE_FOOT, (i) => widths[i]!)).toEqual({ i: 2, worth: 60 });
    expect(bestWhereShorterIsWider(BY_THE_FOOT, (_p, _a, _b, i) => widths[i]!, 0, 0, 0)).toEqual({ i: 2, worth: 60 });
  });

  it("is none where no length gives a board, or none goes into the log", () => {
    const none = { i: -1, worth: 0 };
    expect(bestWhereShorterIsWider(BY_THE_FOOT, () => 0, 0, 0, 0)).toEqual(none);
    expect(bestWhereShorterIsWider([], () => 9, 0, 0, 0)).toEqual(none);
    expect(bestOfAll(BY_THE_FOOT, () => 0)).toEqual(none);
  });

  it("is found without weighing every length where shorter ones are never narrower", () => {
    const growing = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(growing, (steps) => {
        const widths = steps.map((_, i) => steps.slice(0, i + 1).reduce((total, step) => total + step, 0));
        const every = bestOfAll(BY_THE_FOOT, (i) => widths[i]!);
        expect(bestWhereShorterIsWider(BY_THE_FOOT, (_p, _a, _b, i) => widths[i]!, 0, 0, 0)).toEqual(every);
      }),
      { seed: 12, numRuns: 1000 },
    );
  });
});
