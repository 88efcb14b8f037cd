import { describe, expect, it } from "vitest";
import { feet, inches, mayBeNegative, mayBeZero, number, oneOf, optional, yesNo } from "../../src/cells/read";
import { spread, table } from "../../src/cells/spread";
import { NoAnswer } from "../../src/math/errors";
import { called } from "./reading/ask";

const area = (...cells: unknown[]) =>
  called(
    spread({ width: inches, length: feet, allowance: optional(inches, 0) }, ({ width, length, allowance }) => {
      if (width > 50) throw new NoAnswer("width (in): wanted 50 or less, got 51");
      return (width + allowance) * length;
    }),
    ...cells,
  );
const column = (...cells: unknown[]) => cells.map((cell) => [cell]);

describe("ranges", () => {
  it("a column with a column answers row by row", () =>
    expect(area(column(4, 6), column(10, 12))).toEqual(column(40, 72)));
  it("one value goes with every row", () => expect(area(column(4, 6), 10)).toEqual(column(40, 60)));
  it("a row stays a row", () => expect(area([[4, 6]], 10)).toEqual([[40, 60]]));
  it("a column against a row makes a grid", () =>
    expect(area(column(4, 6), [[10, 12]])).toEqual([
      [40, 48],
      [60, 72],
    ]));
  it("different heights are one error that says both", () =>
    expect(area(column(4, 6, 8), column(10, 12))).toEqual([
      [{ error: "#VALUE!", message: "length: wanted 3 rows like width, or one, got 2 rows" }],
    ]));
  it("a bad row holds its own error and the others answer", () => {
    const answer = area(column(4, "oak", 51, "#DIV/0!", 6), 10);
    expect(answer.map(([cell]) => (typeof cell === "object" ? cell.error : cell))).toEqual([
      40,
      "#VALUE!",
      "#N/A",
      "#DIV/0!",
      60,
    ]);
  });
  it("a bad constant is an error in every row", () =>
    expect(area(column(4, 6), "long").map(([cell]) => (cell as { error: string }).error)).toEqual([
      "#VALUE!",
      "#VALUE!",
    ]));
  it("100,000 rows lose none", () => {
    const rows = Array.from({ length: 100_000 }, (_, i) => [1 + (i % 40)]);
    const answer = area(rows, 10);
    expect(answer.length).toBe(100_000);
    expect(answer.every(([cell], i) => cell === rows[i]![0]! * 10)).toBe(true);
  });
});

describe("blank, zero and left out", () => {
  it.each([0, null, undefined, "", "  "])("a row of nothing but %j answers 0", (blank) =>
    expect(area([[blank]], [[blank]])).toEqual([[0]]),
  );
  it("an unfilled row answers 0 although an optional number is there", () => expect(area(null, 0, 1)).toEqual([[0]]));
  it("one value that stands for every row begins none: beside a column the column decides", () => {
    expect(area(column(4, null, 0), 10)).toEqual(column(40, 0, 0));
    expect(area(10, [[4, null]])).toEqual([[40, 0]]);
    expect(area(column(4, null), [[10, null]])).toEqual([
      [40, { error: "#VALUE!", message: expect.stringMatching(/^length: /) as string }],
      [{ error: "#VALUE!", message: expect.stringMatching(/^width: /) as string }, 0],
    ]);
    expect(area(column(4, null), null)).toEqual([
      [{ error: "#VALUE!", message: expect.stringMatching(/^length: /) as string }],
      [0],
    ]);
    expect(area(column(4, null), "#REF!")).toMatchObject([[{ error: "#REF!" }], [{ error: "#REF!" }]]);
  });
  it("one missing of two is named", () =>
    expect(area(4, null)).toEqual([[{ error: "#VALUE!", message: expect.stringMatching(/^length: .*blank/) }]]));
  it("an optional number at 0 means its default", () => expect(area(4, 10, 0)).toEqual([[40]]));
  it.each(["0", "0.0", " 00 ", "0 in", '0"', "0%", "0 mm"])("in a column formatted as Text %j is that 0", (zero) => {
    expect(area(zero, zero)).toEqual([[0]]);
    expect(area(4, 10, zero)).toEqual([[40]]);
  });
  it("a message says whether a blank or a 0 was met", () => {
    const missed = (cell: unknown) => area(4, cell)[0]![0] as { message: string };
    expect(missed(null).message).toBe("length: wanted a value (others of this row are given), got a blank");
    expect(missed(0).message).toBe("length: wanted a value (others of this row are given), got a blank or 0");
    expect(missed("0").message).toBe('length: wanted a value (others of this row are given), got "0"');
  });
  it("an error is handed on even in an unfilled row", () =>
    expect(area(null, "#REF!")).toMatchObject([[{ error: "#REF!" }]]));
  it("an error object of a host counts as the error", () =>
    expect(area({ type: "Error", basicType: "Error", basicValue: "#N/A" }, 10)).toMatchObject([[{ error: "#N/A" }]]));

  const named = (name: unknown, size: unknown) =>
    called(
      spread({ species: oneOf({ oak: [], ash: [] }), size: number }, ({ size }) => size),
      name,
      size,
    );
  it("a name alone does not fill a row", () => expect(named("oak", 0)).toEqual([[0]]));
  it("a size alone asks for the name", () => expect(named(null, 3)).toMatchObject([[{ error: "#VALUE!" }]]));
  const onlyName = (name: unknown) =>
    called(
      spread({ species: oneOf({ oak: [] }) }, () => 1),
      name,
    );
  it("where only a name is asked for, its blank is an unfilled row", () => expect(onlyName("")).toEqual([[0]]));

  const fall = (from: unknown, to: unknown) =>
    called(
      spread({ from: number, to: mayBeZero(number) }, ({ from, to }) => from - to),
      from,
      to,
    );
  it("where 0 is a real value a blank is 0", () => expect(fall(5, null)).toEqual([[5]]));
});

describe("a data-type object", () => {
  const holding = (basicValue: unknown) => ({ type: "FormattedNumber", basicValue, numberFormat: "0.00" });
  it("counts as the plain value in it: a number, a text, a 0, a blank", () => {
    expect(area(holding(4), holding("10 ft"))).toEqual([[40]]);
    expect(area(holding(4), 10, holding(0))).toEqual([[40]]);
    expect(area(column(holding(0), holding("")), column(null, holding(" ")))).toEqual(column(0, 0));
  });
  it("may hold a minus, TRUE or FALSE", () => {
    const signed = (cell: unknown) =>
      called(
        spread({ a: mayBeNegative(number) }, ({ a }) => a),
        cell,
      );
    expect(signed(holding(-7))).toEqual([[-7]]);
    const crossed = (cell: unknown) =>
      called(
        spread({ a: number, b: yesNo }, ({ b }) => b),
        1,
        cell,
      );
    expect(crossed(column(holding(true), holding(false)))).toEqual(column(true, false));
  });
});

describe("what leaves by the door", () => {
  const answering = (answer: number) =>
    called(
      spread({ a: number }, () => answer),
      1,
    );
  it("is never NaN or infinite", () => {
    expect(answering(NaN)).toMatchObject([[{ error: "#VALUE!", message: expect.stringMatching(/fault in Bole/) }]]);
    expect(answering(Infinity)).toMatchObject([[{ error: "#N/A" }]]);
  });
  it("says so when Bole itself is at fault", () => {
    const broken = spread({ a: number }, () => {
      throw new TypeError("x is undefined");
    });
    expect(broken([[1]])).toMatchObject([
      [{ error: "#VALUE!", message: expect.stringMatching(/fault in Bole.*x is undefined/) }],
    ]);
  });
});

describe("a table", () => {
  it("shows an empty cell as empty text, and an error in its own cell", () =>
    expect(
      table({ a: number }, () => [
        ["rule", "board feet"],
        ["Doyle", undefined],
        ["Scribner", new NoAnswer("too small")],
      ])([[1]]),
    ).toEqual([
      ["rule", "board feet"],
      ["Doyle", ""],
      ["Scribner", { error: "#N/A", message: "too small" }],
    ]));
  it("takes one cell, not a column", () =>
    expect(table({ a: number }, ({ a }) => [[a]])(column(1, 2))).toMatchObject([[{ error: "#VALUE!" }]]));
  it("of nothing is 0", () => expect(table({ a: number }, ({ a }) => [[a]])([[0]])).toEqual([[0]]));
});

describe("whatever a host hands over", () => {
  it("a range of anything is answered with a value or an error, never a throw", () => {
    for (const odd of [undefined, null, [], [[]], [[], [1]], {}, () => 1, Symbol.iterator.description, NaN, [[{}]]])
      expect(() => spread({ a: inches }, ({ a }) => a)(odd as unknown[][])).not.toThrow();
  });
});
