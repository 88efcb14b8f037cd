import { describe, expect, it } from "vitest";
import * as read from "../../../src/cells/read";
import { spread, table } from "../../../src/cells/spread";
import { called, refusal } from "./ask";

describe("lists", () => {
  const widths = (cells: unknown[]) => table({ widths: read.list(read.inches) }, ({ widths }) => [widths])([cells])[0];
  it("pass over blanks", () => expect(widths([4, null, "5 1/2", 0, ""])).toEqual([4, 5.5]));
  it("name the place of a bad value", () =>
    expect(widths([4, "wide"])).toEqual([{ error: "#VALUE!", message: expect.stringMatching(/^widths, value 2: /) }]));
  it("hand on an error among their cells", () => expect(widths([4, "#REF!"])).toMatchObject([{ error: "#REF!" }]));

  const steps = (cells: unknown[]) => table({ widths: read.series(read.inches) }, ({ widths }) => [widths])([cells])[0];
  it("at equal steps may end in blanks but not have a gap", () => {
    expect(steps([4, 5, 6, null])).toEqual([4, 5, 6]);
    expect(steps([4, null, 6])).toEqual([{ error: "#VALUE!", message: expect.stringMatching(/gap.*value 2/) }]);
  });

  const readings = (grid: unknown) =>
    called(
      table({ readings: read.matrix(read.inches) }, ({ readings }) => readings.map((row) => [JSON.stringify(row)])),
      grid,
    );
  it("in a grid are one for each row, without blanks and empty rows", () => {
    const grid = [
      [1.7, null, "1 3/4"],
      [null, "", 0],
      [1.6, 1.5],
    ];
    expect(readings(grid)).toEqual([["[1.7,1.75]"], ["[1.6,1.5]"]]);
    expect(readings([[null, 0], [""]])).toEqual([[0]]);
  });
  it("in a grid name row and place of a bad value, and hand on an error", () => {
    expect(readings([[1], [1, "thick"]])).toEqual([[refusal(/^readings, row 2, value 2: .*thick/)]]);
    expect(readings([[1], ["thick", "#REF!"]])).toMatchObject([[{ error: "#REF!" }]]);
  });

  const boards = (w: unknown, l: unknown) =>
    called(
      table({ all: read.rows({ widths: read.inches, lengths: read.feet }) }, ({ all }) =>
        all.map(({ widths, lengths }) => [widths, lengths]),
      ),
      w,
      l,
    );
  it("line up row by row, one length with every width", () => {
    expect(boards([[6], [8]], [["8-6"], [10]])).toEqual([
      [6, 8.5],
      [8, 10],
    ]);
    expect(boards([[6], [null], [8]], 10)).toEqual([
      [6, 10],
      [8, 10],
    ]);
  });
  it("name the row that is begun but not finished", () =>
    expect(boards([[6], [8]], [[10], [null]])).toEqual([
      [{ error: "#VALUE!", message: expect.stringMatching(/lengths.*row 2/) }],
    ]));
  it("refuse different heights", () =>
    expect(boards([[6], [8], [9]], [[10], [12]])).toMatchObject([[{ error: "#VALUE!" }]]));

  const options = (grid: unknown) =>
    called(
      table({ settings: read.settings({ trim: read.inches, "scale step": read.inches, rip: read.yesNo }) }, (given) => [
        [JSON.stringify(given.settings)],
      ]),
      grid,
    )[0]![0];
  it("of settings come in any order and spelling, and an unknown one lists the known", () => {
    expect(
      options([
        ["Scale-Step", "1/32"],
        ["rip", "yes"],
        [null, null],
      ]),
    ).toBe('{"scale step":0.03125,"rip":true}');
    expect(options([["kerfs", 1]])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/trim.*scale step/),
    });
    expect(
      options([
        ["trim", 1],
        ["trim", 2],
      ]),
    ).toMatchObject({ error: "#VALUE!" });
    expect(options(null)).toBe("{}");
  });
});

describe("a figure that stands once for a whole list", () => {
  const loss = (thickness: unknown, kerf: unknown) =>
    called(
      spread({ thickness: read.inches, kerf: read.sameForAll(read.inches) }, ({ thickness, kerf }) => thickness + kerf),
      thickness,
      kerf,
    );
  it("leaves an unfilled row 0, where another number that is given would make it half filled", () => {
    expect(loss([[1], [null], [0]], 0.125)).toEqual([[1.125], [0], [0]]);
    expect(loss(null, 0.125)).toEqual([[0]]);
    const both = spread({ a: read.inches, b: read.inches }, ({ a, b }) => a + b);
    expect(called(both, null, 0.125)).toEqual([[refusal(/^a: /)]]);
  });
  it("is missed by every row that is filled when it is blank", () =>
    expect(loss([[1], [null]], null)).toEqual([[refusal(/^kerf: .*got a blank/)], [0]]));
  it("hands on its error to every row", () => expect(loss([[null]], "#REF!")).toMatchObject([[{ error: "#REF!" }]]));
});
