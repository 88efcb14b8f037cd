import { describe, expect, it } from "vitest";
import { bladeCost } from "../../../src/math/sawing/blade-cost";
import { residueOf } from "../../../src/math/sawing/residue";

describe("what a log leaves beside its boards", () => {
  it.each([
    // By hand: 280 bf are 23.333 ft3; an eighth of that is dust at 1/8 in on 1 in; the rest of 40 ft3 is slab
    [{ logsFt3: 40, boardFeet: 280, thicknessIn: 1, kerfIn: 0.125 }, 2.9167, 13.75],
    [{ logsFt3: 50, boardFeet: 480, thicknessIn: 2, kerfIn: 0.25 }, 5, 5],
    [{ logsFt3: 10, boardFeet: 0, thicknessIn: 1, kerfIn: 0.125 }, 0, 10],
  ])("%j", (sawing, sawdust, slabs) => {
    const [dust, slab] = residueOf(sawing);
    expect(dust!.solidFt3).toBeCloseTo(sawdust, 4);
    expect(slab!.solidFt3).toBeCloseTo(slabs, 4);
  });

  it("in loose yards and cords: 27 ft3 a yard, 128 ft3 a cord of which 70 % is wood", () => {
    const [dust, slab] = residueOf({ logsFt3: 50, boardFeet: 480, thicknessIn: 2, kerfIn: 0.25 });
    expect(dust!.looseYd3).toBeCloseTo(12.5 / 27, 9);
    expect(slab!.cords).toBeCloseTo(5 / 89.6, 9);
  });

  it("and boards make up the log to the last chip; more boards than wood are refused", () => {
    const log = { logsFt3: 40, thicknessIn: 1, kerfIn: 0.25 };
    for (const boardFeet of [0, 100, 400, 480])
      expect(
        residueOf({ ...log, boardFeet }).reduce((sum, { solidFt3 }) => sum + solidFt3, boardFeet / 12),
      ).toBeCloseTo(40, 9);
    expect(residueOf({ ...log, boardFeet: 470 })[1]!.solidFt3).toBe(0);
    expect(() => residueOf({ ...log, boardFeet: 480.1 })).toThrow("wanted up to 480");
    expect(() => residueOf({ ...log, logsFt3: 0, boardFeet: 0 })).toThrow(
      "volume of the logs (ft3): wanted more than 0",
    );
  });
});

describe("what a blade costs", () => {
  it.each([
    // By hand: (30 + 5 * 8) / (400 * 6)
    [{ price: 30, sharpenings: 5, sharpening: 8, faceFt2: 400 }, 70 / 2400],
    [{ price: 30, sharpenings: 0, sharpening: 0, faceFt2: 400 }, 0.075],
    [{ price: 30, sharpenings: 5, sharpening: 8, faceFt2: 400, yieldBf: 0.5 }, 140 / 2400],
    [{ price: 0, sharpenings: 1, sharpening: 10, faceFt2: 100 }, 0.05],
  ])("%j", (blade, cost) => expect(bladeCost(blade)).toBeCloseTo(cost, 12));

  it("is less the oftener it is sharpened, as long as a sharpening costs less than a new blade", () => {
    const after = (sharpenings: number) => bladeCost({ price: 30, sharpenings, sharpening: 8, faceFt2: 400 });
    for (let n = 0; n < 20; n++) expect(after(n + 1)).toBeLessThan(after(n));
  });

  it("has no answer without a face, and none below 0", () => {
    expect(() => bladeCost({ price: 30, sharpenings: 0, sharpening: 0, faceFt2: 0 })).toThrow(
      "wanted more than 0, got 0",
    );
    expect(() => bladeCost({ price: -1, sharpenings: 0, sharpening: 0, faceFt2: 1 })).toThrow(
      "price of the blade: wanted 0",
    );
  });
});
