import { describe, expect, it } from "vitest";
import { SAWVARIATION } from "../../../src/functions/sawing";
import { refused, rowNamed, type Cell } from "../sheet";

describe("readings of sawn boards", () => {
  it("may lack some, and are taken a row a board", () => {
    const table = SAWVARIATION([
      [1.7, 1.73, 1.71, 1.72],
      [1.67, 1.72, null, 1.71],
    ]) as Cell[][];
    expect(rowNamed(table, "mean")![1]).toBeCloseTo((1.7 + 1.73 + 1.71 + 1.72 + 1.67 + 1.72 + 1.71) / 7, 12);
    const manyReadings = [1.7, 1.71].map((size) => Array.from({ length: 30 }, () => size));
    expect(rowNamed(SAWVARIATION(manyReadings) as Cell[][], "within boards")![1]).toBeCloseTo(0, 12);
    expect(SAWVARIATION([[1.7, 1.73]])).toEqual([[refused("#N/A", /boards: wanted 2 or more/)]]);
    expect(
      SAWVARIATION([
        [1.7, "thick"],
        [1, 1],
      ]),
    ).toEqual([[refused("#VALUE!", /readings, row 1, value 2/)]]);
  });
});
