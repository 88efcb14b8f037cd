import { describe, expect, it } from "vitest";
import { planCut } from "../../../../src/math/sawing/cut-plan/plan-cut";

describe("what no plan can pass", () => {
  it("is, without a kerf, the solid at the best product's tally for its green size, by hand", () => {
    // A cylinder of 20 in and 12 ft is pi * 100 * 144 / 144 bf of solid; 4/4 cut 1 1/8 in thick gives 8/9 of it, 8/4
    // cut 2 1/8 in thick 16/17.
    const solid = Math.PI * 100;
    const log = { diameterIn: 20, lengthFt: 12, kerfIn: 0.125, settings: { taper: 0 } };
    const { logBoardFeet, mostWithoutKerf } = planCut({ ...log, products: [{ thickness: 1 }, { thickness: 2 }] });
    expect(logBoardFeet).toBeCloseTo(solid, 9);
    expect(mostWithoutKerf).toBeCloseTo((solid * 16) / 17, 9);
  });
});
