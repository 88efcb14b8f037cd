import { describe, expect, it } from "vitest";
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
