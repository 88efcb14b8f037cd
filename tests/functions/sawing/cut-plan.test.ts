import { describe, expect, it } from "vitest";
import { CUTPLAN, CUTYIELD, HEADHEIGHTS } from "../../../src/functions/sawing";
import { column, one, rowNamed, under, type Cell } from "../sheet";

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
    expect(under(plan, "drop").slice(1, 13)).toEqual(Array(12).fill(1.25));
  });

  it("adds up: the board feet of the passes are the total, pass by pass thickness times width times length", () => {
    for (const [pattern, settings] of [
      ["live", []],
      ["cant", [["cant widths", "4, 6, 8"]]],
      ["quarter", [["scale step", "1/16"]]],
      ["slab", [["rip", "no"]]],
    ] as [string, Cell[][]][]) {
      const asked = [one(21), one(10), column("4/4", "8/4"), one("3 mm"), one(pattern), settings] as const;
      const table = CUTPLAN(...asked) as Cell[][];
      const end = table.findIndex((row) => row[0] === "total");
      const boards = table.slice(1, end).filter((row) => row[5] !== "");
      const sum = boards.reduce((total, row) => total + (row[5] as number), 0);
      expect(sum).toBeGreaterThan(100);
      expect(table[end]![5]).toBeCloseTo(sum, 9);
      const pieces = pattern === "quarter" ? 4 : 1;
      for (const [, , thickness, width, length, feet] of boards as number[][])
        expect(feet).toBeCloseTo((pieces * thickness! * width! * length!) / 12, 9);
      expect(CUTYIELD(...asked)[0]![0]).toBeCloseTo(sum, 9);
    }
  });

  it("says what was rounded to the scale, and to what", () => {
    const notes = under(CUTPLAN(one(16), one(8), [["4/4", 1.1]], one(0.13)) as Cell[][], "note").join("\n");
    expect(notes).toContain("kerf 0.13 in is no whole number of 1/32 in scale steps: 1/8 in was taken");
    expect(notes).toContain("green size 1.1 in is no whole number of 1/32 in scale steps: 1-3/32 in was taken");
    expect(under(plan, "note").join("\n")).not.toContain("scale steps");
  });

  it("says how far the first cut may be moved: both ends of the run give the same total, the next step less", () => {
    const table = CUTPLAN(one(12.5), one(10), one("4/4"), one(0.125), one("cant"), [["cant widths", 6]]) as Cell[][];
    const first = rowNamed(table, "first cut")!;
    expect(first[1]).toBe(12.3125);
    expect(first[9]).toMatch(
      /^any scale step of the turned cant from 12-9\/32 to 12-11\/32 gives the same total with the same drops; this is the middle$/,
    );
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
    const asked = [one(20.5), one("122 in"), products, one(0.125), one("live"), settings] as const;
    const table = CUTPLAN(...asked) as Cell[][];
    expect(rowNamed(table, "total")![5]).toBeCloseTo(209, 9);
    expect(rowNamed(table, "total")![8]).toBeCloseTo(1113.0416667, 6);
    expect(CUTYIELD(...asked)[0]![0]).toBeCloseTo(1113.0416667, 6);
  });
});
