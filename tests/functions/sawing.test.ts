import { describe, expect, it } from "vitest";
import {
  CUTPLAN,
  CUTYIELD,
  HEADHEIGHTS,
  KERFGAIN,
  KERFLOSS,
  PIECECOUNT,
  SAWTIME,
  SAWVARIATION,
  THROATFIT,
} from "../../src/functions/sawing";
import { column, one, refused, type Cell } from "./sheet";

/** A column of a spilled table, by its heading. */
const under = (table: Cell[][], heading: string) => {
  const at = table[0]!.indexOf(heading);
  return table.slice(1).map((row) => row[at]);
};
const rowNamed = (table: Cell[][], name: string) => table.find((row) => row[0] === name);

describe("a cut plan on a sheet", () => {
  const plan = CUTPLAN(one("16"), one("8'4\""), one("4/4"), one(0.125), one("Live"), [["Trim", 4]]) as Cell[][];

  it("lists every pass with its blade height, then the total", () => {
    expect(plan[0]!.slice(0, 7)).toEqual([
      "pass",
      "blade height",
      "thickness",
      "width",
      "length",
      "board feet",
      "drop",
    ]);
    expect(under(plan, "pass").slice(0, 14)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, "total"]);
    expect(under(plan, "blade height").slice(0, 4)).toEqual([16, 14.75, 13.5, 12.25]);
    expect(rowNamed(plan, "total")![5]).toBeCloseTo(95.5, 9);
    expect(plan.every((row) => row.length === plan[0]!.length)).toBe(true);
  });

  it("has drops that are board and kerf, and heights that HEADHEIGHTS counts down to", () => {
    const heights = under(HEADHEIGHTS(one(16), one(1.125), one(0.125), one(12)) as Cell[][], "blade height");
    expect(under(plan, "blade height").slice(0, 13)).toEqual(heights);
    expect(
      under(plan, "drop")
        .slice(1, 13)
        .every((drop) => drop === 1.25),
    ).toBe(true);
  });

  it("adds up: the board feet of the passes are the total, pass by pass thickness times width times length", () => {
    for (const [pattern, ...rest] of [
      ["live", []],
      ["cant", [["cant widths", "4, 6, 8"]]],
      ["quarter", [["scale step", "1/16"]]],
      ["slab", [["rip", "no"]]],
    ] as [string, Cell[][]][]) {
      const table = CUTPLAN(one(21), one(10), column("4/4", "8/4"), one("3 mm"), one(pattern), rest[0]) as Cell[][];
      const end = table.findIndex((row) => row[0] === "total");
      const boards = table.slice(1, end).filter((row) => row[5] !== "");
      const sum = boards.reduce((total, row) => total + (row[5] as number), 0);
      expect(sum).toBeGreaterThan(100);
      expect(table[end]![5]).toBeCloseTo(sum, 9);
      const pieces = pattern === "quarter" ? 4 : 1;
      for (const [, , thickness, width, length, feet] of boards as number[][])
        expect(feet).toBeCloseTo((pieces * thickness! * width! * length!) / 12, 9);
      expect(CUTYIELD(one(21), one(10), column("4/4", "8/4"), one("3 mm"), one(pattern), rest[0])[0]![0]).toBeCloseTo(
        sum,
        9,
      );
    }
  });

  it("says what was rounded to the scale, and to what", () => {
    const notes = under(CUTPLAN(one(16), one(8), [["4/4", 1.1]], one(0.13)) as Cell[][], "note").join("\n");
    expect(notes).toContain("kerf 0.13 in is no whole number of 1/32 in scale steps: 1/8 in was taken");
    expect(notes).toContain("green size 1.1 in is no whole number of 1/32 in scale steps: 1-3/32 in was taken");
    expect(under(plan, "note").join("\n")).not.toContain("scale steps");
  });

  it("says how far the opening face may be moved: both ends of the run give the same total, the next step less", () => {
    const table = CUTPLAN(one(12.5), one(10), one("4/4"), one(0.125), one("cant"), [["cant widths", 6]]) as Cell[][];
    const opening = rowNamed(table, "opening face")!;
    expect(opening[1]).toBe(12.3125);
    expect(opening[9]).toMatch(/^any height of the turned cant from 12-9\/32 to 12-11\/32 gives the same total/);
  });

  it("gives the shim for the small end of a log sawn along its pith, and none for one that lies flat", () => {
    const shim = (lies: string) =>
      rowNamed(
        CUTPLAN(one(16), one(12), one(1), one(0.125), one("live"), [
          ["log lies", lies],
          ["taper", 1],
        ]) as Cell[][],
        "shim",
      );
    // 3 in of taper in 12 ft: the small end is 1 1/2 in further from its pith
    expect(shim("split")![1]).toBeCloseTo(1.5, 12);
    expect(shim("flat")).toBeUndefined();
  });

  it("plans for money where prices are given, by width", () => {
    const products = [
      ["4/4", 1.125, 3, ""],
      ["4/4", 1.125, 4.25, 8],
      ["8/4", 2.1875, 3.5, ""],
      ["8/4", 2.1875, 5.5, 10],
    ];
    const settings = [
      ["Objective", "value"],
      ["pass cost", 1.5],
      ["trim", "2 in"],
    ];
    const table = CUTPLAN(one(20.5), one("122 in"), products, one(0.125), one("live"), settings) as Cell[][];
    expect(rowNamed(table, "total")![5]).toBeCloseTo(209, 9);
    expect(rowNamed(table, "total")![8]).toBeCloseTo(1113.0416667, 6);
    expect(CUTYIELD(one(20.5), one("122 in"), products, one(0.125), one("live"), settings)[0]![0]).toBeCloseTo(
      1113.0416667,
      6,
    );
  });
});

describe("bad input to a cut plan", () => {
  const settings = (...rows: Cell[][]) => CUTPLAN(one(20), one(10), one("4/4"), one(0.125), one("live"), rows);

  it("a log wider than the guides gets the advice that fits: flats first, or halve it", () => {
    expect(settings(["guide opening", 14])).toEqual([
      [refused("#N/A", /butt of 21-1\/4 in, guides that open 14 in: halve or quarter it first/)],
    ]);
    expect(under(settings(["guide opening", 16]) as Cell[][], "note").join()).toMatch(
      /take flats off both sides first/,
    );
    expect(under(settings(["guide opening", 22]) as Cell[][], "note").join()).not.toMatch(/flats/);
    const cant = CUTPLAN(one(20), one(10), one("4/4"), one(0.125), one("cant"), [
      ["cant widths", 8],
      ["guide opening", 16],
    ]);
    expect(cant).toEqual([[refused("#N/A", /a cant cannot be sawn/)]]);
  });

  it("an unknown setting is named, and the known ones listed", () => {
    expect(settings(["colour", 3])).toEqual([[refused("#VALUE!", /cant widths.*colour/s)]]);
    expect(settings(["trim", 3], ["trim", 4])).toEqual([[refused("#VALUE!", /trim once/)]]);
    expect(settings(["wane", 0.5])).toEqual([[refused("#N/A", /wane.*less than 0.5/)]]);
    expect(settings(["ring angle", 90])).toEqual([[refused("#N/A", /ring angle/)]]);
  });

  it("value without prices is refused, and so is a cant without widths", () => {
    expect(settings(["objective", "value"])).toEqual([[refused("#N/A", /needs a price for 4\/4/)]]);
    expect(CUTPLAN(one(20), one(10), one("4/4"), one(0.125), one("cant"))).toEqual([[refused("#N/A", /cant widths/)]]);
  });

  it("a product thicker than the log, or a log too small, is a plan of no passes and 0", () => {
    for (const [diameter, thickness] of [
      [10, 14],
      [2, "4/4"],
    ] as Cell[][]) {
      const table = CUTPLAN(one(diameter), one(8), one(thickness), one(0.125)) as Cell[][];
      expect(table[1]!.slice(0, 6)).toEqual(["total", "", "", "", "", 0]);
      expect(under(table, "note").join()).toContain("none of these products comes out of this log");
      expect(CUTYIELD(one(diameter), one(8), one(thickness), one(0.125))).toEqual([[0]]);
    }
    expect(CUTYIELD(one(20), one(3), one("4/4"), one(0.125))).toEqual([[0]]);
  });

  it("a bowed log is planned live and split only, in half feet", () => {
    expect(settings(["sweep", 2], ["log lies", "flat"])).toEqual([
      [refused("#N/A", /live sawing of a log that lies split/)],
    ]);
    expect(settings(["sweep", 2], ["trim", 4])).toEqual([[refused("#N/A", /whole 6 in steps, got 4 in/)]]);
    expect(rowNamed(settings(["sweep", 2]) as Cell[][], "total")![5]).toBeGreaterThan(50);
  });

  it("a scale too fine for a spreadsheet is refused in words", () => {
    expect(settings(["scale step", 0.00001])).toEqual([[refused("#N/A", /coarser scale step/)]]);
    expect(settings(["width step", 0.0001])).toEqual([[refused("#N/A", /larger step/)]]);
    const free = [
      ["cant widths", "8, 10"],
      ["cant offset", "free"],
      ["scale step", 0.0005],
    ];
    expect(CUTPLAN(one(40), one(10), one("4/4"), one(0.125), one("cant"), free)).toEqual([
      [refused("#N/A", /coarser/)],
    ]);
  });

  it("no kerf is missing in a plan, though KERFLOSS takes it for none", () => {
    expect(CUTPLAN(one(20), one(10), one("4/4"), one(0))).toEqual([[refused("#VALUE!", /kerf/)]]);
    expect(CUTPLAN(one(20), one(10), one(null), one(0.125))).toEqual([[refused("#VALUE!", /products/)]]);
    expect(KERFLOSS(one("4/4"), one(0))).toEqual([[0]]);
  });
});

describe("a bed that the blade cannot reach", () => {
  const notes = (pattern: string, ...rows: Cell[][]) =>
    under(CUTPLAN(one(24), one(10), one("4/4"), one(0.125), one(pattern), rows) as Cell[][], "note").join();

  it("ends a live plan above the clearance, and is said for narrow cants and for quarters", () => {
    const table = CUTPLAN(one(24), one(10), one("4/4"), one(0.125), one("live"), [["bed clearance", 5]]) as Cell[][];
    const end = table.findIndex((row) => row[0] === "total");
    expect(table[end - 1]![1] as number).toBeGreaterThanOrEqual(5);
    expect(notes("cant", ["cant widths", "4, 8"], ["bed clearance", 5])).toMatch(
      /narrower than the bed clearance of 5 in/,
    );
    expect(notes("cant", ["cant widths", "6, 8"], ["bed clearance", 5])).not.toMatch(/narrower/);
    expect(notes("quarter", ["bed clearance", 5])).toMatch(/blade goes no lower than 5 in/);
  });
});

describe("columns of logs", () => {
  it("spill, each log its own answer, a bad one its own error, an unfilled row 0", () => {
    const logs = column(12.5, 0, "wide", 30);
    const answers = CUTYIELD(logs, column(10, 0, 10, 10), one("4/4"), one(0.125), one("cant"), [
      ["cant widths", "6, 8"],
    ]);
    expect(answers[0]![0]).toBeCloseTo(68.1666667, 6);
    expect(answers[1]).toEqual([0]);
    expect(answers[2]).toEqual([refused("#VALUE!", /diameter/)]);
    expect(answers[3]![0] as number).toBeGreaterThan(400);
  });

  it("miss a length by name, and a kerf that every row lacks", () => {
    expect(CUTYIELD(column(12, 14), column(8, 0), one("4/4"), one(0.125))[1]).toEqual([refused("#VALUE!", /length/)]);
    expect(CUTYIELD(column(12, 0), column(8, 0), one("4/4"), one(0))).toEqual([[refused("#VALUE!", /kerf/)], [0]]);
  });

  it("take one opening, feed or pair of kerfs for all logs, and answer 0 beside an unfilled one", () => {
    expect(THROATFIT(one(40), column(16, 0), column(20, 0), column(12, 0))).toEqual([[20], [0]]);
    expect(SAWTIME(column(20, 0), column(12, 0), one(24), one(1.5))).toEqual([[40], [0]]);
    expect(PIECECOUNT(column(8, null), one(1.125), one(0.125))).toEqual([[6], [0]]);
    expect(KERFGAIN(column(20, null), column(12, null), one("4/4"), one(0.25), one(0.125))).toEqual([[19], [0]]);
  });

  it("give metric and inch logs the same plan", () => {
    const metric = CUTYIELD(one("50.8 cm"), one("3048 mm"), one("4/4"), one("3.175 mm"));
    expect(metric).toEqual(CUTYIELD(one(20), one(10), one("4/4"), one("1/8")));
  });
});

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
