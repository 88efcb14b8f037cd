import { describe, expect, it } from "vitest";
import type { CutJob } from "../../../../src/math/sawing/cut-plan/cut-job";
import { bestStack, boardsUnder, worthOf } from "../../../../src/math/sawing/cut-plan/stack";

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
