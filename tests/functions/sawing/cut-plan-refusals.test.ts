import { describe, expect, it } from "vitest";
import { CUTPLAN, CUTYIELD, KERFLOSS } from "../../../src/functions/sawing";
import { one, refused, rowNamed, under, type Cell } from "../sheet";
import { log, PLAIN } from "./planned";

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
    expect(cant).toEqual([[refused("#N/A", /neither a cant nor a timber can be sawn/)]]);
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

describe("sizes that no log, saw or list has", () => {
  const answer = (...given: Cell[]) => CUTYIELD(...(given.map(one) as [Cell[][], Cell[][], Cell[][], Cell[][]]));
  const with20 = (name: string, value: Cell) => CUTYIELD(...log({ [name]: value }));

  it("are refused with the limit", () => {
    expect(answer(300, 12, "4/4", 0.125)[0]![0]).toBeGreaterThan(10_000);
    expect(answer(301, 12, "4/4", 0.125)).toEqual([[refused("#N/A", /diameter \(in\): wanted 0 to 300, got 301/)]]);
    expect(answer(20, 66, "4/4", 0.125)).toEqual([[refused("#VALUE!", /^length: wanted feet up to 65 .*, got 66$/)]]);
    expect(answer(20, 12, "4/4", 3)).toEqual([[refused("#N/A", /kerf \(in\): wanted 0 to 0\.75, got 3/)]]);
    expect(with20("taper", 12)[0]![0]).toBeGreaterThan(PLAIN);
    expect(with20("taper", 12.5)).toEqual([[refused("#N/A", /taper.*wanted 0 to 12, got 12.5/)]]);
    expect(with20("small end across", 60)[0]![0]).toBeGreaterThan(PLAIN);
    expect(with20("small end across", 61)).toEqual([[refused("#N/A", /small end across.*wanted 6\.66667 to 60/)]]);
    const manyRows = Array.from({ length: 201 }, (_, i) => [1, 1.125, 3, i + 1]);
    expect(CUTYIELD(...log({}, "live", manyRows))).toEqual([[refused("#N/A", /rows of products: wanted 1 to 200/)]]);
  });
});
