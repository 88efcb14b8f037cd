import { describe, expect, it } from "vitest";
import { cutYield, planCut } from "../../../src/math/sawing/plan-cut";
import { bruteForce, type SmallLog } from "./brute-force";
import { dice, requestFor, throwLog } from "./small-logs";
import { WORKED_PLANS } from "./worked-plans";

describe("the worked plans", () => {
  for (const worked of WORKED_PLANS) {
    it(`${worked.name}: total, board feet and bounds`, () => {
      const plan = planCut(worked.request);
      expect(Math.abs(plan.total - worked.total)).toBeLessThan(1e-6);
      expect(Math.abs(plan.boardFeet - worked.boardFeet)).toBeLessThan(1e-6);
      expect(plan.logBoardFeet).toBeCloseTo(worked.logBoardFeet, 3);
      expect(plan.mostBoardFeet).toBeCloseTo(worked.mostBoardFeet, 3);
      expect(cutYield(worked.request)).toBe(plan.total);
    });

    const printedFeet = worked.feet;
    if (!printedFeet) continue;
    it(`${worked.name}: the boards`, () => {
      const boards = planCut(worked.request).passes.flatMap((pass) =>
        pass.board ? [{ ...pass, board: pass.board }] : [],
      );
      const feet = boards.map(({ board }) => board.boardFeet).sort((x, y) => x - y);
      expect(feet.length).toBe(printedFeet.length);
      [...printedFeet].sort((x, y) => x - y).forEach((printed, i) => expect(feet[i]).toBeCloseTo(printed, 3));
      if (worked.blades) expect(boards.map(({ bladeHeightIn }) => bladeHeightIn)).toEqual(worked.blades);
    });
  }
});

describe("a second sawyer who tries everything", () => {
  const kinds: [SmallLog["pattern"], count: number, bowed: boolean][] = [
    ["live", 160, false],
    ["live", 100, true],
    ["slab", 120, false],
    ["cant", 110, false],
    ["quarter", 120, false],
  ];
  kinds.forEach(([pattern, count, bowed], kind) => {
    it(`finds no better and no worse total on ${count} small ${bowed ? "bowed " : ""}logs sawn ${pattern}`, () => {
      const roll = dice(20260100 + kind);
      let sawn = 0;
      for (let i = 0; i < count; i++) {
        const log = throwLog(roll, pattern, bowed);
        const total = cutYield(requestFor(log));
        expect(Math.abs(total - bruteForce(log)), JSON.stringify(log)).toBeLessThan(1e-6);
        if (total > 0) sawn++;
      }
      // logs too small for a board agree too easily
      expect(sawn).toBeGreaterThan(count * 0.6);
    });
  });
});
