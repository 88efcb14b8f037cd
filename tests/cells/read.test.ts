import { describe, expect, it } from "vitest";
import * as read from "../../src/cells/read";
import type { Argument } from "../../src/cells/read";
import { spread, table } from "../../src/cells/spread";

/** What a cell becomes under a reader, or its error. */
function readOne<T>(reader: (range: unknown, name: string) => Argument<T>, cell: unknown): unknown {
  return table({ value: reader([[cell]], "size") } as never, ({ value }: { value: T }) => [[value as never]])[0]![0];
}
const refused = (reader: (range: unknown, name: string) => Argument<unknown>, cell: unknown) => {
  const answer = readOne(reader, cell) as { error: string; message: string };
  expect(answer).toMatchObject({ error: "#VALUE!" });
  expect(answer.message).toMatch(/^size.*: wanted .*, got /);
  return answer.message;
};

const refusal = (message: RegExp) => ({ error: "#VALUE!", message: expect.stringMatching(message) as string });

describe("a size in inches", () => {
  it.each([
    [14.5, 14.5],
    ["14 1/2", 14.5],
    ["14-1/2", 14.5],
    ["14½", 14.5],
    ["14 ½", 14.5],
    ["½", 0.5],
    ["14.5", 14.5],
    [".5", 0.5],
    ['14 1/2"', 14.5],
    ["14.5 in", 14.5],
    ["14 inches", 14],
    ["5/4", 1.25],
    ["4Q", 1],
    ["8 q", 2],
    ["8'6\"", 102],
    ["8' 6", 102],
    ["8ft", 96],
    ["8′ 6½″", 102.5],
    ["8’6”", 102],
    ["2.54 cm", 1],
    ["300 mm", 11.811023622],
    ["1 m", 39.37007874],
    ["30 centimetres", 11.811023622],
    ["300 millimeters", 11.811023622],
    ["2 meters", 78.74015748],
    ["5.08 cm.", 2],
    ["1/16", 0.0625],
    ["14' 6 1/2\"", 174.5],
    ["14ft6", 174],
    ["14.5'", 174],
    ["１４", 14],
    ["14\u00a01/2", 14.5],
    [{ type: "FormattedNumber", basicValue: 12, numberFormat: "0.0" }, 12],
  ])("reads %j as %d", (cell, size) => expect(readOne(read.inches, cell)).toBe(size));

  it.each(["oak", "14 1/0", "1/2/3", "--5", "8-6", "14 ton", "1e3", "0x10", "Infinity", "14 1/2 1/2", "½½"])(
    "refuses %j",
    (cell) => void refused(read.inches, cell),
  );
  it("never guesses what a comma means", () => {
    for (const [reader, cell] of [
      [read.inches, "1,5"],
      [read.feet, "1,500"],
      [read.money, "1,500"],
    ] as const)
      expect(refused(reader, cell)).toBe(`size: wanted a number without a comma, such as 1.5 or 1500, got "${cell}"`);
  });
  it("refuses a date, which 5/4 becomes in a General cell, and says what to do", () => {
    for (const serial of [46146, 11689, 23377, 18264, "46146"])
      expect(refused(read.inches, serial)).toMatch(/a date.*Type '5\/4 with the apostrophe/);
  });
  it.each([-3, "-3", true, 1e300, 200_000, 1e-300 * 0 - 1])("refuses %j", (cell) => void refused(read.inches, cell));
});

describe("a length in feet", () => {
  it.each([
    [8, 8],
    ["8'6\"", 8.5],
    ["8' 6-1/2\"", 8.541666666666666],
    ["8ft 6in", 8.5],
    ["8 ft. 6 in.", 8.5],
    ["8-6", 8.5],
    ["8-6-1/2", 8.541666666666666],
    ['102"', 8.5],
    ["102 in", 8.5],
    ["12 1/2", 12.5],
    ["8'-6\"", 8.5],
    ["2.4384 m", 8],
    ["14 ft 6-1/2", 14.541666666666666],
    ["16FT", 16],
  ])("reads %j as %d", (cell, length) => expect(readOne(read.feet, cell)).toBe(length));

  it("2.4 m is its inches over 12, so that a whole foot in metres is a whole foot", () => {
    expect(readOne(read.feet, "2.4 m")).toBeCloseTo(7.874015748, 9);
    for (const foot of [8, 10, 12, 16]) expect(readOne(read.feet, `${foot * 0.3048} m`)).toBe(foot);
  });
  it.each(["8'14\"", "8.5'6\"", "8-14"])(
    "refuses %j: the inches after feet are under 12, the feet whole",
    (cell) => void refused(read.feet, cell),
  );
});

describe("other amounts", () => {
  it.each([
    [read.pounds, "18 kg", 39.68320719],
    [read.pounds, "1.2 t", 2645.547146],
    [read.pounds, "1 tonne", 2204.622622],
    [read.pounds, "40 LBS.", 40],
    [read.pounds, "1 pound", 1],
    [read.percent, "65 percent", 65],
    [read.fahrenheit, "20ºC", 68],
    [read.fahrenheit, "20 deg C", 68],
    [read.poundsForce, "2500 lbs", 2500],
    [read.poundsForce, "11 KN", 2472.898374],
    [read.psi, "100 Mpa", 14503.773773],
    [read.horsepower, "15 KW", 20.115331343],
    [read.horsepower, "1 1/2 hp", 1.5],
    [read.degrees, "60 deg.", 60],
    [read.moisture, 0.12, 12],
    [read.moisture, 1.2, 120],
    [read.moisture, 12, 12],
    [read.moisture, 3, 300],
    [read.moisture, "12%", 12],
    [read.moisture, "0.12", 12],
    [read.percent, 0.65, 65],
    [read.percent, 1, 100],
    [read.percent, 65, 65],
    [read.percent, "65 %", 65],
    [read.fahrenheit, "20 C", 68],
    [read.fahrenheit, "-40 °C", -40],
    [read.fahrenheit, -10, -10],
    [read.fahrenheit, "68 F", 68],
    [read.feetPerMinute, "25 m/s", 4921.259843],
    [read.feetPerMinute, "60 ft/min", 60],
    [read.poundsForce, "11 kN", 2472.898374],
    [read.psi, "100 MPa", 14503.773773],
    [read.horsepower, "15 kW", 20.115331343],
    [read.count, "4", 4],
    [read.number, "12%", 0.12],
  ] as const)("%o reads %j as %d", (reader, cell, amount) =>
    expect(readOne(reader, cell) as number).toBeCloseTo(amount, 6),
  );
  it.each([
    [read.pounds, "12 stone"],
    [read.count, 1.5],
    [read.money, "$5"],
    [read.percent, -1],
    [read.number, "1,000"],
    [read.feetPerMinute, true],
    [read.fahrenheit, "warm"],
    [read.money, 1e300],
    [read.pounds, "5 constructor"],
    [read.pounds, "1 ton"],
  ] as const)("%o refuses %j", (reader, cell) => void refused(reader, cell));
  it("says what is wanted in one breath", () => {
    expect(refused(read.pounds, -5)).toBe(
      "size: wanted pounds above 0, such as 40, 40 lb, 18 kg or 1.2 t (metric), got -5",
    );
    expect(refused(read.inches, -3)).toBe("size: wanted inches above 0, such as 14.5, 14 1/2, 5/4 or 36 cm, got -3");
    expect(refused(read.money, "$5")).toBe(
      'size: wanted an amount of money, such as 12.50, without its sign, got "$5"',
    );
  });
});

describe("a name", () => {
  const trees = { "white oak": ["Quercus alba", "oak"], "black walnut": ["walnut"], "sugar maple": ["hard maple"] };
  const tree = (range: unknown, name: string) => read.oneOf(trees, range, name);
  it.each(["White Oak", "white-oak", " WHITE  OAK ", "Oak, white", "quercus alba", "oak"])("%j is white oak", (cell) =>
    expect(readOne(tree, cell)).toBe("white oak"),
  );
  it("offers the nearest when it is unknown", () => expect(refused(tree, "balck walnut")).toMatch(/black walnut/));
  it.each([7, true, "__proto__", "constructor"])("refuses %j", (cell) => void refused(tree, cell));
  it("reads ¼ as 1/4", () =>
    expect(readOne((range, name) => read.oneOf({ "International 1/4": [] }, range, name), "international ¼")).toBe(
      "International 1/4",
    ));
});

describe("lists", () => {
  const widths = (cells: unknown[]) => table({ all: read.list(read.inches([cells], "widths")) }, ({ all }) => [all])[0];
  it("pass over blanks", () => expect(widths([4, null, "5 1/2", 0, ""])).toEqual([4, 5.5]));
  it("name the place of a bad value", () =>
    expect(widths([4, "wide"])).toEqual([{ error: "#VALUE!", message: expect.stringMatching(/^widths, value 2: /) }]));
  it("hand on an error among their cells", () => expect(widths([4, "#REF!"])).toMatchObject([{ error: "#REF!" }]));

  const steps = (cells: unknown[]) =>
    table({ all: read.series(read.inches([cells], "widths")) }, ({ all }) => [all])[0];
  it("at equal steps may end in blanks but not have a gap", () => {
    expect(steps([4, 5, 6, null])).toEqual([4, 5, 6]);
    expect(steps([4, null, 6])).toEqual([{ error: "#VALUE!", message: expect.stringMatching(/gap.*value 2/) }]);
  });

  const readings = (grid: unknown) =>
    table({ all: read.matrix(read.inches(grid, "readings")) }, ({ all }) => all.map((row) => [JSON.stringify(row)]));
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
    table({ all: read.rows({ width: read.inches(w, "widths"), length: read.feet(l, "lengths") }) }, ({ all }) =>
      all.map(({ width, length }) => [width, length]),
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
    table(
      { given: read.settings(grid, "settings", { trim: read.inches, "scale step": read.inches, rip: read.yesNo }) },
      ({ given }) => [[JSON.stringify(given)]],
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
    spread(
      { thick: read.inches(thickness, "thickness"), kerf: read.sameForAll(read.inches(kerf, "kerf")) },
      ({ thick, kerf }) => thick + kerf,
    );
  it("leaves an unfilled row 0, where another number that is given would make it half filled", () => {
    expect(loss([[1], [null], [0]], 0.125)).toEqual([[1.125], [0], [0]]);
    const both = { a: read.inches([[1], [null]], "a"), b: read.inches(0.125, "b") };
    expect(spread(both, ({ a, b }) => a + b)[1]).toEqual([refusal(/^a: /)]);
  });
  it("is missed by every row that is filled when it is blank", () =>
    expect(loss([[1], [null]], null)).toEqual([[refusal(/^kerf: .*got a blank/)], [0]]));
  it("hands on its error to every row", () => expect(loss([[null]], "#REF!")).toMatchObject([[{ error: "#REF!" }]]));
});

describe("whatever a host hands over", () => {
  it("a range of anything is answered with a value or an error, never a throw", () => {
    for (const odd of [undefined, null, [], [[]], [[], [1]], {}, () => 1, Symbol.iterator.description, NaN, [[{}]]])
      expect(() => spread({ a: read.inches(odd, "a") }, ({ a }) => a)).not.toThrow();
  });
});
