import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import {
  BOARDFEET,
  DRESSEDSIZE,
  FEETINCHES,
  FRACTION,
  MEASURE,
  PACKFEET,
  QUARTERS,
  SLABAREA,
  SLABFEET,
  SURFACEMEASURE,
  TALLY,
} from "../../src/functions/boards";
import { column, messageOf } from "./sheet";

describe("a column of boards", () => {
  it("spills one answer a row, blank rows as 0 and bad rows as their own error", () => {
    const answer = BOARDFEET(column("4/4", "5/4", null, "thick"), column(6, 8, null, 6), column(10, 12, null, 8));
    expect(answer.slice(0, 3)).toEqual([[5], [10], [0]]);
    expect(answer[3]![0]).toMatchObject({ error: "#VALUE!" });
  });

  it("is the same in metric sizes", () => {
    expect(BOARDFEET([["25.4 mm"]], [["30.48 cm"]], [["3.048 m"]])[0]![0]).toBeCloseTo(10, 8);
    expect(SURFACEMEASURE([["21.59 cm"]], [["3.6576 m"]])).toEqual([[8]]);
  });

  it("says which size a begun row lacks", () => {
    expect(messageOf(BOARDFEET([[1]], [[6]], [[null]]))).toMatch(/^length: /);
  });
});

describe("a tally", () => {
  it("passes over rows that nobody has begun, and refuses a row half filled", () => {
    expect(TALLY(column(6.25, null, 8.75, 0), column(8, null, 12, null), [[1]])).toEqual([[4 + 9]]);
    expect(messageOf(TALLY(column(6.25, 8.75), column(8, null), [[1]]))).toMatch(/lengths.*row 2/);
  });

  it("takes one length for all the widths", () => {
    expect(TALLY(column(6.25, 6.25, 6.25), [["8'"]], [["4/4"]])).toEqual([[12]]);
  });

  it("that nobody has begun is 0, though its thickness is set", () => {
    expect(TALLY(column(null, null), column(null, null), [["4/4"]])).toEqual([[0]]);
    expect(messageOf(TALLY(column(8, 9), column(8, 8), [[null]]))).toMatch(/^thickness: /);
  });

  it("has one thickness: a column of them would show the whole lot's feet beside each board", () => {
    expect(messageOf(TALLY(column(6, 7, 8), column(8, 10, 12), column(1, 2, 3)))).toMatch(
      /^thickness: wanted one cell, for the whole of widths, got 3 × 1 cells/,
    );
  });

  it("names the board that is too short", () => {
    expect(TALLY(column(8, 9), column(8, "9 in"), [[1]])[0]![0]).toMatchObject({
      error: "#N/A",
      message: "length of board 2 of the list (ft): wanted 1 or more, got 0.75",
    });
  });

  it("knows the rules of halves by the names the trade has for them", () => {
    expect(TALLY(column(8.5, 8.5), [[12]], [[1]], [["Retail"]])).toEqual([[16]]);
    expect(TALLY(column(8.5, 8.5), [[12]], [[1]], [["trade"]])).toEqual([[17]]);
    expect(TALLY(column(8.5), [[12]], [[1]], [["up"]])[0]![0]).toMatchObject({ error: "#VALUE!" });
  });
});

describe("a slab", () => {
  it("takes its widths along a column or along a row", () => {
    expect(SLABFEET([["9/4"]], [[15, 17.25, 19.75]], [[`10'3"`]])[0]![0]).toBeCloseTo(33.31, 2);
    expect(SLABFEET([["9/4"]], column(15, 17.25, 19.75), [[`10'3"`]])[0]![0]).toBeCloseTo(33.31, 2);
  });

  it("refuses a gap between widths, since the steps are equal, but not blanks after them", () => {
    expect(SLABAREA(column(20, 22, 24, null, null), [[6]])).toEqual([[11]]);
    expect(messageOf(SLABAREA(column(20, null, 24), [[6]]))).toMatch(/no gap/);
  });

  it("is one slab a formula: two slabs side by side are not read as one", () => {
    const two = [
      [30, 24, 21],
      [28, 22, 20],
    ];
    expect(messageOf(SLABFEET(column(1, 2), two, column(10, 12)))).toMatch(/^thickness: wanted one cell/);
    expect(messageOf(SLABFEET([[1]], two, [[10]]))).toMatch(/^widths: wanted one row or one column, got 2 × 3 cells/);
    expect(messageOf(SLABAREA(column(30, 24), column(10, 12)))).toMatch(/^length: wanted one cell/);
  });

  it("says why Simpson's rule has no answer", () => {
    expect(SLABFEET([[2]], column(20, 22), [[6]], [["Simpson"]])[0]![0]).toMatchObject({
      error: "#N/A",
      message: "Simpson's rule: wanted an odd number of widths, 3 or more, got 2",
    });
  });
});

describe("a thickness", () => {
  it("is read as the trade writes it", () => {
    expect(QUARTERS(column("5/4", "5Q", "1 1/4", "1-1/4", 1.25))).toEqual(column(1.25, 1.25, 1.25, 1.25, 1.25));
  });

  it("that a sheet has turned into a date is refused", () => {
    expect(messageOf(QUARTERS([[46146]]))).toMatch(/date/);
  });

  it("in millimetres finds its row of the table", () => {
    expect(QUARTERS([["31.75 mm"]], [["S2S"]])).toEqual([[1.0625]]);
  });

  it("below an inch is listed as the fraction that the trade calls it", () => {
    expect(messageOf(QUARTERS([["9/4"]], [["S2S"]]))).toMatch(/\(3\/8, 1\/2, 5\/8, 3\/4, 4\/4, /);
  });

  it("of softwood is #VALUE! where the cell names no size, and #N/A where the standard has none", () => {
    for (const none of ["joist", "2x6x12", 2, "2-4"])
      expect(DRESSEDSIZE([[none]])[0]![0]).toMatchObject({ error: "#VALUE!" });
    expect(DRESSEDSIZE([["2x7"]])[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("of softwood that is from memory is not answered as a number", () => {
    expect(DRESSEDSIZE([["3x8"]], [["thickness"]])[0]![0]).toMatchObject({
      error: "#N/A",
      message: "thickness of 3x8 (in): no copy of the standard was seen to print it; from memory 2.5",
    });
  });
});

describe("text for the tape", () => {
  it("is read back as the length it stands for", () => {
    for (let sixteenths = 1; sixteenths <= 16 * 30; sixteenths += 7) {
      const inches = sixteenths / 16;
      expect(MEASURE(FEETINCHES([[inches]]))).toEqual([[inches]]);
      expect(MEASURE(FRACTION([[inches]]))).toEqual([[inches]]);
    }
  });

  it("carries a minus, and is 0 for a blank", () => {
    expect(FRACTION(column(-2.25, null))).toEqual(column("-2-1/4", 0));
    expect(FEETINCHES([["-30 1/2"]])).toEqual([[`-2'-6 1/2"`]]);
  });
});

describe("the grade on a page", () => {
  const grade = (wanted: string) => readCatalog().find(({ name }) => name === wanted)!.grade;

  it("does not call published what rests on custom, though an old book prints the rule for thin boards", () => {
    expect(grade("SLABFEET")).toBe("common practice, in part from memory");
    for (const name of ["ROUNDFEET", "LINEARFEET", "SLABAREA"]) expect(grade(name)).toBe("common practice");
    expect(grade("BOARDFEET")).toBe("published, in part common practice");
  });
});

describe("a length written 8-6", () => {
  it("is 8 ft 6 in where a board's length is asked; elsewhere the message says so", () => {
    expect(BOARDFEET([[1]], [[12]], [["8-6"]])).toEqual([[8.5]]);
    expect(messageOf(MEASURE([["8-6"]]))).toMatch(/8-6 is feet and inches only where a log or board length is asked/);
    expect(messageOf(MEASURE([["8-6"]]))).toMatch(/here write 8'6"/);
  });
});

describe("a bundle", () => {
  it("is not filled to 1.1 percent by a cell of 110 %", () => {
    expect(PACKFEET([[48]], [[10]], [[12]], [[1]], [[1.1]])[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("takes its fill as percent or as a share", () => {
    for (const fill of [90, 0.9, "90%"]) expect(PACKFEET([[48]], [[10]], [[12]], [[1]], [[fill]])).toEqual([[432]]);
  });
});
