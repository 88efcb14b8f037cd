import { describe, expect, it } from "vitest";
import type { Api } from "../../src/engine/node";
import { calculateAll } from "../../src/engine/recalculate";

/** An engine that is still busy with the workbook before: what is waited for first is the end of that. */
function busyEngine(othersBefore: number) {
  let [begun, waits] = [7, 0];
  const formula = {
    executeCalculation: () => undefined,
    onCalculationResultApplied: () => {
      if (++waits > othersBefore) begun++;
      return Promise.resolve();
    },
  };
  const api = { getFormula: () => formula } as unknown as Api;
  return { api, calculations: () => begun, waits: () => waits };
}

describe("calculating a workbook", () => {
  it("waits for its own calculation, not for one that was going on when it was opened", async () => {
    for (const others of [0, 1, 3]) {
      const engine = busyEngine(others);
      await calculateAll(engine, 1000);
      expect(engine.calculations()).toBe(8);
      expect(engine.waits()).toBe(others + 1);
    }
  });
});
