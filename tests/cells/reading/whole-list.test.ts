import { describe, expect, it } from "vitest";
import { feet, forWholeList, inches, list, optional, series, together } from "../../../src/cells/read";
import { spread, table } from "../../../src/cells/spread";
import { called, refusal } from "./ask";

const column = (...cells: unknown[]) => cells.map((cell) => [cell]);

describe("a figure that goes with the whole of a list", () => {
  const total = (thickness: unknown, widths: unknown) =>
    called(
      spread({ thickness: forWholeList(inches, "widths"), widths: list(inches) }, (given) =>
        given.widths.reduce((sum, width) => sum + given.thickness * width, 0),
      ),
      thickness,
      widths,
    );

  it("is one cell beside a list, or a column beside a single cell", () => {
    expect(total(2, column(3, 4))).toEqual([[14]]);
    expect(total(column(1, 2), 4)).toEqual(column(4, 8));
  });

  it("is refused as a column beside a column, which looks as if it went row by row", () => {
    const message = /^thickness: wanted one cell, for the whole of widths, got 2 × 1 cells$/;
    expect(total(column(1, 2), column(3, 4))).toEqual([[refusal(message)]]);
    expect(total(column(1, 2), [[3, 4]])).toEqual([[refusal(message)]]);
  });

  it("leaves a list that nobody has filled in at 0", () =>
    expect(total(column(null, null), column(null, null))).toEqual([[0]]));
});

describe("cells that make one thing together", () => {
  const log = (diameter: unknown, length: unknown) =>
    called(
      table({ log: optional(together({ diameterIn: inches, lengthFt: feet })) }, ({ log }) => [
        [log ? log.diameterIn * log.lengthFt : "no log"],
      ]),
      diameter,
      length,
    );

  it("are given all or none", () => {
    expect(log(20, "8-6")).toEqual([[170]]);
    for (const blank of [null, 0, ""]) expect(log(blank, blank)).toEqual([["no log"]]);
  });

  it("are #VALUE! when one of them is missing, which is named", () => {
    expect(log(20, null)).toEqual([[refusal(/^length: wanted a value .*got a blank$/)]]);
    expect(log(0, 12)).toEqual([[refusal(/^diameter: wanted a value .*got a blank or 0$/)]]);
  });

  it("are single cells, and an error in one is handed on", () => {
    expect(log(column(20, 21), 12)).toEqual([[refusal(/^diameter: wanted one cell, got 2 × 1 cells$/)]]);
    expect(log("#REF!", 12)).toMatchObject([[{ error: "#REF!" }]]);
  });
});

describe("values at equal steps", () => {
  it("lie in one row or one column; a block would be several things read as one", () => {
    const sum = (cells: unknown) =>
      called(
        spread({ widths: series(inches) }, ({ widths }) => widths.reduce((total, width) => total + width, 0)),
        cells,
      );
    expect(sum([[1, 2, 3]])).toEqual([[6]]);
    expect(sum(column(1, 2, 3))).toEqual([[6]]);
    expect(
      sum([
        [1, 2],
        [3, 4],
      ]),
    ).toEqual([[refusal(/^widths: wanted one row or one column, got 2 × 2 cells$/)]]);
  });
});
