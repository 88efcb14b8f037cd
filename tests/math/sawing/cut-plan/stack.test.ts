import { describe, expect, it } from "vitest";
import type { CutJob } from "../../../../src/math/sawing/cut-plan/cut-job";
import { firstCut } from "../../../../src/math/sawing/cut-plan/first-cut";
import { bestStack, boardsUnder, worthOf, type WorthAt } from "../../../../src/math/sawing/cut-plan/stack";

/** A saw of a kerf of one step, and boards of these green sizes in steps. */
function jobOf(...greenSteps: number[]): CutJob {
  return { stepIn: 1, kerfSteps: 1, products: greenSteps.map((steps) => ({ greenSteps: steps })) } as unknown as CutJob;
}

describe("the best stack of boards under a face", () => {
  it("takes one thick board rather than two thin ones of the same worth, in whichever order they are listed", () => {
    for (const [thin, thick] of [
      [0, 1],
      [1, 0],
    ] as const) {
      const job = thin === 0 ? jobOf(3, 7) : jobOf(7, 3);
      const stack = bestStack(job, 8, 0, (product) => (product === thick ? 2 : 1));
      expect(boardsUnder(job, stack, 8)).toEqual([{ product: thick, face: 8 }]);
      expect(stack.boards[8]).toBe(1);
      expect(boardsUnder(job, stack, 7)).toEqual([{ product: thin, face: 7 }]);
      expect(boardsUnder(job, stack, 3)).toEqual([]);
    }
  });

  it("takes two thin boards where they are worth more, and counts both", () => {
    const job = jobOf(3, 7);
    const stack = bestStack(job, 8, 0, (product) => (product === 1 ? 1.9 : 1));
    expect(boardsUnder(job, stack, 8)).toEqual([
      { product: 0, face: 8 },
      { product: 0, face: 4 },
    ]);
    expect(stack.boards[8]).toBe(2);
    expect(worthOf(stack)).toBe(2);
  });

  it("leaves a board that is worth nothing, and goes no lower than it may", () => {
    const job = jobOf(3);
    expect(
      boardsUnder(
        job,
        bestStack(job, 8, 0, () => 0),
        8,
      ),
    ).toEqual([]);
    const above = bestStack(job, 8, 2, () => 1);
    expect(boardsUnder(job, above, 8)).toEqual([{ product: 0, face: 8 }]);
    expect(boardsUnder(job, above, 5)).toEqual([]);
  });
});

describe("the face to open a log at", () => {
  const job = jobOf(3);
  const opened = (worthAt: WorthAt, top = 12) => firstCut(job, bestStack(job, top, 0, worthAt), 0, worthAt);
  const within =
    (...faces: number[]): WorthAt =>
    (_, face) =>
      faces.includes(face) ? 1 : 0;

  it("is the middle of the faces that give the same boards", () => {
    expect(opened(within(5, 6, 7))).toEqual({ face: 6, lowest: 5, highest: 7, drops: [0] });
  });

  it("lies in the longest run of them, not in the first", () => {
    expect(opened(within(5, 7, 8))).toEqual({ face: 7, lowest: 7, highest: 8, drops: [0] });
  });

  it("may be the highest face of the log, and is none where no board lies in it", () => {
    expect(opened(within(10, 11, 12))).toEqual({ face: 11, lowest: 10, highest: 12, drops: [0] });
    expect(opened(within())).toBeUndefined();
  });

  it("is the one asked for, and none where no board lies under it", () => {
    const worthAt = within(5, 6, 7);
    const at = (firstCutSteps: number) =>
      firstCut({ ...job, firstCutSteps }, bestStack(job, 12, 0, worthAt), 0, worthAt);
    expect(at(5)).toEqual({ face: 5, lowest: 5, highest: 5, drops: [0] });
    expect(at(9)).toBeUndefined();
    expect(() => at(13)).toThrow("first cut (in above the bed): wanted 0 to 12, got 13");
  });
});
