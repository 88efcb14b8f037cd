import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  cullBoxBoardFeet,
  cullRingBoardFeet,
  cullSectorBoardFeet,
  cullSweepBoardFeet,
} from "../../../src/math/logs/cull";
import { LOG_RULES, type LogRuleName } from "../../../src/math/logs/log-rules";
import { logScaleBoardFeet } from "../../../src/math/logs/log-scale";
import { answerOrNone } from "../answer-or-none";

// No worked example of a deduction was seen in print: the formulas are from memory, and these are sums of theirs by hand.
const LOG = { diameterIn: 20, lengthFt: 16, rule: "Doyle" } as const; // scales 256 by Doyle

describe("a boxed defect", () => {
  it.each([
    [4, 5, 16, 32], // 5 x 6 x 16 / 15
    [5, 5, 16, 38], // 6 x 6 x 16 / 15 = 38.4
    [5, 4, 5.25, 11], // 6 x 5 x 5.25 / 15 = 10.5: a half goes up, FSH 2409.11
  ])("%d by %d in over %d ft takes %d board feet", (widthIn, heightIn, lengthFt, expected) => {
    expect(cullBoxBoardFeet({ widthIn, heightIn, lengthFt })).toBe(expected);
  });

  it("takes four fifths of the box's solid board feet", () => {
    const solid = (9 + 1) * (9 + 1) * 12 * (1 / 12);
    expect(cullBoxBoardFeet({ widthIn: 9, heightIn: 9, lengthFt: 12 })).toBe(0.8 * solid);
  });

  it("refuses sizes of no log", () => {
    expect(() => cullBoxBoardFeet({ widthIn: 301, heightIn: 4, lengthFt: 8 })).toThrow("wanted 0 to 300, got 301");
    expect(() => cullBoxBoardFeet({ widthIn: 4, heightIn: 301, lengthFt: 8 })).toThrow("wanted 0 to 300, got 301");
    expect(() => cullBoxBoardFeet({ widthIn: 4, heightIn: 4, lengthFt: 0 })).toThrow(
      "defect length (ft): wanted more than 0, got 0",
    );
    expect(() => cullBoxBoardFeet({ widthIn: 4, heightIn: 4, lengthFt: 301 })).toThrow(
      "defect length (ft): wanted 0 to 300, got 301",
    );
  });
});

describe("sweep", () => {
  it.each([
    [0, 0],
    [1, 0],
    [3, 26], // 2/20 of 256 = 25.6
    [11, 128],
    [21, 256],
  ])("of %d in on a 20-in log takes %d of its 256 board feet", (sweepIn, expected) => {
    expect(cullSweepBoardFeet({ ...LOG, sweepIn })).toBe(expected);
  });

  it("refuses more sweep than log", () => {
    expect(() => cullSweepBoardFeet({ ...LOG, sweepIn: 22 })).toThrow("wanted 0 to 21, got 22");
  });

  it("goes by International 1/4 when no rule is named", () => {
    expect(cullSweepBoardFeet({ diameterIn: 20, lengthFt: 16, sweepIn: 3 })).toBe(29); // a tenth of 289.74
  });
});

describe("a pie-cut", () => {
  it.each([
    [25, 8, 32], // a quarter of half of 256
    [50, 16, 128],
    [100, 16, 256],
  ])("of %d percent over %d ft takes %d of 256 board feet", (sharePercent, defectLengthFt, expected) => {
    expect(cullSectorBoardFeet({ ...LOG, sharePercent, defectLengthFt })).toBe(expected);
  });

  it("refuses more than the circle and more than the log", () => {
    expect(() => cullSectorBoardFeet({ ...LOG, sharePercent: 101, defectLengthFt: 8 })).toThrow(
      "wanted 0 to 100, got 101",
    );
    expect(() => cullSectorBoardFeet({ ...LOG, sharePercent: 25, defectLengthFt: 17 })).toThrow(
      "wanted 0 to 16, got 17",
    );
  });
});

describe("rot that runs round", () => {
  it("with a sound core takes the scale of the whole less the core's", () => {
    // Doyle: 20 in 256, 16 in 144
    expect(cullRingBoardFeet({ outerIn: 20, lengthFt: 16, coreIn: 16, rule: "Doyle" })).toBe(112);
    expect(cullRingBoardFeet({ outerIn: 20, lengthFt: 16, coreIn: 20, rule: "Doyle" })).toBe(0);
  });

  it("without one takes the rotten heart as a box", () => {
    expect(cullRingBoardFeet({ outerIn: 5, lengthFt: 16 })).toBe(38);
  });

  it("refuses a core over the outer diameter or under the rule's smallest", () => {
    expect(() => cullRingBoardFeet({ outerIn: 16, lengthFt: 16, coreIn: 20 })).toThrow("wanted 0 to 16, got 20");
    expect(() => cullRingBoardFeet({ outerIn: 16, lengthFt: 16, coreIn: 3, rule: "Doyle" })).toThrow(
      "Doyle core diameter (in): wanted 4 to 300, got 3",
    );
  });
});

it("no deduction is negative, none of these takes more than the log", () => {
  const rules = fc.constantFrom(...(Object.keys(LOG_RULES) as LogRuleName[]));
  const inches = fc.double({ min: 0.1, max: 60, noNaN: true });
  const feet = fc.double({ min: 0.5, max: 40, noNaN: true });
  fc.assert(
    fc.property(rules, inches, feet, inches, feet, (rule, diameterIn, lengthFt, other, defectLengthFt) => {
      for (const take of [
        () => cullSweepBoardFeet({ rule, diameterIn, lengthFt, sweepIn: other }),
        () => cullSectorBoardFeet({ rule, diameterIn, lengthFt, sharePercent: other, defectLengthFt }),
        () => cullRingBoardFeet({ rule, outerIn: diameterIn, lengthFt, coreIn: other }),
      ]) {
        const taken = answerOrNone(take);
        if (taken === undefined) continue; // outside a limit
        expect(taken).toBeGreaterThanOrEqual(0);
        // a ring's difference is rounded to the whole board foot
        expect(taken).toBeLessThanOrEqual(logScaleBoardFeet({ rule, diameterIn, lengthFt }) + 0.5);
      }
    }),
    { seed: 7, numRuns: 500 },
  );
});
