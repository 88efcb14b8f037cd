import { describe, expect, it } from "vitest";
import { clearGrade } from "../../../src/math/boards/clear-grade";
import { HARDWOOD_GRADES } from "../../../src/math/boards/hardwood-grades.table";
import { rowsOf } from "../../csv";

const grade = (widthIn: number, lengthFt: number, cuttings: [number, number][], state: "green" | "dry" = "green") =>
  clearGrade({
    widthIn,
    lengthFt,
    state,
    cuttings: cuttings.map(([width, length]) => ({ widthIn: width, lengthFt: length })),
  });

describe("what the grades ask", () => {
  it("is what the summaries print", () => {
    const printed = new Map(rowsOf("trade/hardwood_grade_minima.csv").map((row) => [row["grade"], row]));
    for (const [name, width, length, cuttings, units, , , most] of HARDWOOD_GRADES) {
      const row = printed.get(name)!;
      expect(row["minimum_board"]).toBe(`${width} in x ${length} ft`);
      expect(row["minimum_cutting"]).toBe(cuttings.map(([w, l]) => `${w} in x ${l} ft`).join(" or "));
      expect(row["yield_units"]).toBe(`SM x ${units}`);
      if (Number.isFinite(most)) expect(row["most_cuttings"]).toBe(String(most));
    }
  });
});

describe("the best grade that is not ruled out", () => {
  // A board 8 in by 12 ft has a surface measure of 8: FAS wants 80 units in 2 cuttings, No. 1 64 in 3, No. 2A 48 in 4
  it("is FAS for one clear cutting of 8 in by 10 ft on a board of 8 in by 12 ft: 80 units of 80", () => {
    expect(grade(8, 12, [[8, 10]])).toEqual({ grade: "FAS" });
  });
  it("is No. 1 Common where a hair is lacking, and says how many units", () => {
    expect(grade(8, 12, [[8, 9.99]])).toEqual({
      grade: "No. 1 Common",
      next: {
        grade: "FAS",
        why: { by: "cuttings", wanted: 80, given: expect.closeTo(79.92, 6) as number, cuttings: 2 },
      },
    });
  });
  it("counts the largest cuttings only, as many as the grade allows", () => {
    // Three of 30 units would be 90; FAS takes two, 60
    expect(
      grade(8, 12, [
        [4, 7.5],
        [4, 7.5],
        [6, 5],
      ]).grade,
    ).toBe("No. 1 Common");
    expect(
      grade(8, 12, [
        [2, 12],
        [2, 12],
        [2, 12],
      ]).grade,
    ).toBeUndefined();
  });
  it("falls with the size of the board", () => {
    expect(grade(5.75, 12, [[5.75, 12]]).next!.why).toEqual({ by: "width", wanted: 6, given: 5.75 });
    expect(grade(5.5, 12, [[5.5, 12]], "dry").grade).toBe("FAS");
    expect(grade(5.49, 12, [[5.49, 12]], "dry").grade).toBe("No. 1 Common");
    expect(grade(8, 7, [[8, 7]]).next!.why).toEqual({ by: "length", wanted: 8, given: 7 });
  });
  it("is none where even the last is ruled out, and without a clear cutting", () => {
    expect(grade(8, 12, [[4, 5]])).toEqual({
      next: { grade: "No. 3A Common", why: { by: "cuttings", wanted: 32, given: 20, cuttings: Infinity } },
    });
    expect(grade(8, 12, []).grade).toBeUndefined();
  });
  it("refuses a cutting that is larger than its board", () => {
    expect(() => grade(8, 12, [[8, 12.5]])).toThrow(
      "length of the board (ft), which holds cutting 1: wanted 12.5 or more",
    );
    expect(() => grade(0, 12, [])).toThrow("width (in): wanted more than 0");
  });
});
