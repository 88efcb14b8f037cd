import { describe, expect, it } from "vitest";
import { planCut } from "../../../../src/math/sawing/cut-plan/plan-cut";
import { productsOf } from "../../../../src/math/sawing/cut-plan/products";

describe("the products wanted of a log", () => {
  it("have their prices by rising width, in whichever order the rows stand", () => {
    const wide = { thickness: 1, price: 8, "from width": 10 };
    const any = { thickness: 1, price: 4 };
    const middling = { thickness: 1, price: 6, "from width": 7 };
    for (const rows of [
      [wide, any, middling],
      [middling, wide, any],
    ])
      expect(productsOf(rows, 1 / 32, true)[0]!.prices.map(({ perBoardFoot }) => perBoardFoot)).toEqual([4, 6, 8]);
  });

  it("are one at least, of a thickness that the scale can show", () => {
    expect(() => productsOf([], 1 / 32, false)).toThrow("products: wanted one thickness or more, got none");
    expect(() => productsOf([{ thickness: 0 }], 1 / 32, false)).toThrow("thickness of a product (in)");
  });
});

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
