import { describe, expect, it } from "vitest";
import {
  BEAMFIT,
  BLADECOST,
  BUCKPLAN,
  CLEARGRADE,
  ENDCOAT,
  FLATTENING,
  LOGHOURS,
  METERREADING,
  RESIDUE,
  SAWNFACE,
  SAWTIME,
  TIEDOWNLIMIT,
  TIEDOWNS,
  TRIPPLAN,
} from "../../src/functions";
import { column, messageOf, one, refused, rowNamed, under } from "./sheet";

describe("tie-downs without a mark", () => {
  it("go on into the count of tie-downs", () => {
    const limit = TIEDOWNLIMIT(one("chain"), one("3/8"));
    expect(limit).toEqual([[2650]]);
    // Half of 9,000 lb over 2,650 lb is 1.7, and 16 ft ask for 3
    expect(TIEDOWNS(one(9000), one(16), limit)).toEqual([[3]]);
    expect(TIEDOWNS(one(20000), one(16), limit)).toEqual([[4]]);
  });
  it("are read by what people call them, in inches and in millimeters, a column at once", () => {
    const gear = column("Chain", "straps", "cable", "rope");
    const answer = TIEDOWNLIMIT(gear, column("5/16", "50 mm", 0.5, 1));
    expect(answer.slice(0, 3)).toEqual([[1900], [2000], [5300]]);
    expect(answer[3]).toEqual([refused("#VALUE!", /^gear: wanted one of chain, webbing, wire rope, got "rope"/)]);
  });
});

describe("the trips of a haul as a table", () => {
  const weights = column(2300, null, 1900, "3100 lb", 900, 1500, "");
  it("names the logs by their place among those weighed, and sums up", () => {
    const table = TRIPPLAN(weights, one(5000));
    expect(table[0]).toEqual(["trip", "logs", "pounds", "pounds left"]);
    expect(under(table, "logs").slice(0, 2)).toEqual(["2, 3", "1, 4, 5"]);
    expect(rowNamed(table, "total")).toEqual(["total", "5 logs", 9700, 300]);
    expect(table[4]![0]).toBe("Proven: no loading needs fewer trips");
  });
  it("weighs its cost against a hired truck, which needs the cost of a trip", () => {
    const last = (trip: number, hire: number) => TRIPPLAN(weights, one(5000), one(trip), one(hire)).at(-1);
    expect(last(90, 300)).toEqual(["Your own trips are cheaper by", "", 120, ""]);
    expect(last(200, 300)).toEqual(["The hired truck is cheaper by", "", 100, ""]);
    expect(last(150, 300)).toEqual(["Both cost the same", "", 0, ""]);
    expect(TRIPPLAN(weights, one(5000), one(null), one(300))).toEqual([
      [refused("#N/A", /^tripcost: wanted what a trip/)],
    ]);
  });
  it("never leaves a log out: one that is too heavy, or cannot be read, is refused by its place", () => {
    expect(TRIPPLAN(column(2300, 5200), one(5000))).toEqual([[refused("#N/A", /^weight of log 2 .*5000, got 5200/)]]);
    expect(TRIPPLAN(column(2300, "big"), one(5000))).toEqual([[refused("#VALUE!", /^weights, value 2: /)]]);
    expect(TRIPPLAN(column(2300), one(null))).toEqual([[refused("#VALUE!", /^payload: /)]]);
  });
});

describe("the cuts of a stem as a table", () => {
  it("has a column for money where prices are given, and never more length than the stem", () => {
    const plain = BUCKPLAN(column(20, 18, 16, 14), one(36), column(8, 12));
    expect(plain[0]!.length).toBe(6);
    const sold = BUCKPLAN(
      column(20, 18, 16, 14),
      one(36),
      column(8, 12),
      [
        [12, 0.4],
        [16, 0.7],
      ],
      one(6),
      one("Doyle"),
    );
    expect(sold[0]!.slice(-2)).toEqual(["price", "money"]);
    const logs = sold.slice(1, -2);
    const feet = logs.reduce((sum, row) => sum + Number(row[2]) + 0.5, 0);
    expect(feet + Number(rowNamed(sold, "left over")![2])).toBeCloseTo(36, 9);
    for (const row of logs) expect(Number(row[7])).toBeCloseTo(Number(row[5]) * Number(row[6]), 9);
  });
  it("takes its 4 in of trim unless told otherwise, and a 0 of trim as text", () => {
    const left = (trim: unknown) =>
      rowNamed(BUCKPLAN(column(20, 20), one(8), one(8), one(null), one(trim)), "left over")![2];
    expect(left("0 in")).toBe(0);
    expect(left(null)).toBe(8);
    expect(BUCKPLAN(column(20, 20), one(8), one(8), one(null), one(0))).toEqual([
      [refused("#VALUE!", /^trim: wanted "/)],
    ]);
  });
  it("takes a whole tree of up to 200 ft, and asks whether more was meant in inches", () => {
    expect(BUCKPLAN(column(30, 4), one(200), one(16))[0]).toContain("board feet");
    expect(BUCKPLAN(column(30, 4), one(720), one(16))).toEqual([[refused("#VALUE!", /up to 200 .*720 in/)]]);
  });
  it("refuses a gap in the readings, which would shift the others", () => {
    expect(BUCKPLAN(column(20, null, 16), one(36), one(8))).toEqual([[refused("#VALUE!", /no gap/)]]);
  });
});

describe("what else a sawyer decides in a week", () => {
  it("says each time that it does not grade", () => {
    const says = (...cuttings: number[][]) => String(CLEARGRADE(one(8), one(12), cuttings)[0]![0]);
    expect(says([8, 10])).toMatch(/^FAS is not ruled out\. This grades nothing/);
    expect(says([6, 5], [5, 5])).toMatch(
      /^No\. 2A Common is not ruled out; No\. 1 Common is, by its cuttings: 55 of 64 units in 3 at most\. This grades nothing/,
    );
    expect(says([1, 1])).toMatch(/^Every grade is ruled out, .*This grades nothing/);
    expect(CLEARGRADE(one(8), one(12), [[4]])).toEqual([[refused("#VALUE!", /cuttings/)]]);
  });
  it("has the blade's cost for a square foot and for a board foot", () => {
    const face = SAWNFACE(one(16), one(8), one("4/4"), one(0.125));
    expect(Number(face[0]![0])).toBeCloseTo(114.25, 2);
    const perFoot = Number(BLADECOST(one(30), one(5), one(8), one(400))[0]![0]);
    expect(Number(BLADECOST(one(30), one(5), one(8), one(400), one(0.5))[0]![0])).toBeCloseTo(2 * perFoot, 12);
  });
  it("takes the hours of a log as SAWTIME takes the minutes of its passes", () => {
    const hours = Number(LOGHOURS(one(16), one(8), one("4/4"), one(0.125), one(30), one(1))[0]![0]);
    expect(hours * 60).toBeCloseTo(Number(SAWTIME(one(13), one(8), one(30), one(1))[0]![0]), 9);
  });
  it("shows what is left beside the boards, a meter's reading, sealer and a timber's room", () => {
    expect(rowNamed(RESIDUE(one(40), one(280), one("4/4"), one("1/8")), "both")![1]).toBeCloseTo(40 - 280 / 12, 9);
    expect(METERREADING(one(7), one("-1.111 C"))[0]![0]).toBeCloseTo(9, 3);
    expect(METERREADING(column(7, null), column(30, null))).toEqual([[9], [0]]);
    expect(ENDCOAT(column(24, null, 24), one(100))[0]![0]).toBeCloseTo((4 * Math.PI) / 100, 9);
    expect(BEAMFIT(column(10, 12), one(6), one(8))).toEqual([[0], [2]]);
    expect(messageOf(BEAMFIT(one(10), one(6), one(8), one(0), one(0), one(3)))).toContain("half a side");
  });
  it("counts the passes that flatten a slab", () => {
    expect(rowNamed(FLATTENING(one(30), one(8), one("3/4"), one("1/8"), one(1), one(15)), "passes")).toEqual([
      "passes",
      180,
      360,
    ]);
  });
});
