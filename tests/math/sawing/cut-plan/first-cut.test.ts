import { describe, expect, it } from "vitest";
import type { CutJob } from "../../../../src/math/sawing/cut-plan/cut-job";
import { firstCut } from "../../../../src/math/sawing/cut-plan/first-cut";
import { bestStack, type WorthAt } from "../../../../src/math/sawing/cut-plan/stack";

/** A saw of a kerf of one step, and boards of these green sizes in steps. */
function jobOf(...greenSteps: number[]): CutJob {
  return { stepIn: 1, kerfSteps: 1, products: greenSteps.map((steps) => ({ greenSteps: steps })) } as unknown as CutJob;
}

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
