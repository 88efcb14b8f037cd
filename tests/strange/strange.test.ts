import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../src/engine/engine";
import { faultOf } from "./faults";
import { habits } from "./workbook";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

describe("workbooks as other programs write them", () => {
  it("are calculated and copied: every part, cell and tag that was not to change stays, whatever the habits", async () => {
    await fc.assert(
      fc.asyncProperty(habits, async (one) => {
        expect(await faultOf(one, engine)).toBe(undefined);
      }),
      { seed: 20261126, numRuns: 40 },
    );
  });
});
