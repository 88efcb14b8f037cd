import { describe, expect, test } from "vitest";
import { ORDERPASSES, ORDERPLAN } from "../../../src/functions/sawing/orders";

const LOGS = [
  [12, "8-4"],
  [13, "8-4"],
  [14, "8-4"],
  [17, "8-4"],
];
const ORDER = [
  ["8/4", 8, 8, 4, "Miller"],
  [null, null, null, null, null],
  ["4/4", 6, 8, 4, "Baker"],
];
const KERF = [[0.125]];
const TRIM = [["trim", 2]];

type Grid = unknown[][];
const plan = (order: Grid, logs: Grid, settings: Grid = TRIM, kerf: Grid = KERF) =>
  ORDERPLAN(order, logs, kerf, settings);
const errorOf = (answer: unknown[][]) => answer[0]![0] as { error: string; message: string };
const rowNamed = (answer: unknown[][], name: unknown) => answer.find(([first]) => first === name)!;

describe("ORDERPLAN", () => {
  const answer = plan(ORDER, LOGS);

  test("says log by log what goes to which line, and keeps the column of a blank row", () => {
    expect(answer[0]).toEqual(
      ["log", "diameter", "length", "wood", "board feet"].concat([
        "8/4 x 8 x 8 Miller",
        "",
        "4/4 x 6 x 8 Baker",
        "note",
      ]),
    );
    expect(answer[1]!.slice(0, 2)).toEqual([3, 14]);
    expect(answer[1]!.slice(5, 8)).toEqual([4, "", 4]);
  });
  test("adds up what is made, ordered, short and over", () => {
    expect(rowNamed(answer, "made").slice(5, 8)).toEqual([4, "", 4]);
    expect(rowNamed(answer, "short").slice(4, 8)).toEqual([0, 0, "", 0]);
    expect(rowNamed(answer, "made")[3]).toBeCloseTo(115.0527, 4);
  });
  test("says the bound in words", () => {
    expect(rowNamed(answer, "bound").at(-1)).toBe("no plan takes less wood");
    const short = plan([["8/4", 8, 8, 40]], LOGS);
    expect(rowNamed(short, "bound").at(-1)).toMatch(/cannot give more|short of less|did not find/);
    expect(rowNamed(short, "short")[5]).toBeGreaterThan(0);
  });
  test("has a column for the cost where the least cost is asked for", () => {
    const costs = LOGS.map(([diameter, length], at) => [diameter, length, "", 20 + at, `log ${at + 1}`]);
    const byCost = plan(ORDER, costs, [...TRIM, ["least", "cost"]]);
    expect(byCost[0]![4]).toBe("cost");
    expect(rowNamed(byCost, "made")[4]).toBe(22);
    expect(byCost[1]![0]).toBe("log 3");
  });
  test("names a setting of the cut plan that it makes no use of", () => {
    const answer = plan(ORDER, LOGS, [...TRIM, ["cant widths", "4, 6"]]);
    expect(rowNamed(answer, "warning").at(-1)).toBe("not used for an order: cant widths");
  });
  test("leaves out a log that does not go between the guides, and says so", () => {
    const answer = plan(ORDER, [...LOGS, [30, "8-4"]], [...TRIM, ["guide opening", 20]]);
    expect(rowNamed(answer, "not sawable").at(-1)).toBe("too wide for guides that open 20 in, even after flats: 5");
  });
});

describe("bad input, line by line", () => {
  test("all of order and logs blank: 0", () => {
    expect(plan([[null]], [[null]])).toEqual([[0]]);
    expect(plan([["", "", "", ""]], [[0, 0]])).toEqual([[0]]);
  });
  test("a line with count 0 or blank is skipped, whatever else is in it", () => {
    const answer = plan([["8/4", 8, "", 0], ["8/4", 8, 8, ""], ...ORDER], LOGS);
    expect(answer[0]!.slice(5, 8)).toEqual(["", "", "8/4 x 8 x 8 Miller"]);
    expect(rowNamed(answer, "made")[7]).toBe(4);
  });
  test("a blank row among the logs keeps the numbers of the others", () => {
    const answer = plan(ORDER, [LOGS[0]!, [null, null], ...LOGS.slice(1)]);
    expect(answer[1]![0]).toBe(4);
  });
  test.each([
    ["no log", ORDER, [[null, null]], TRIM, "logs"],
    ["no line", [[null, null, null, null]], LOGS, TRIM, "order"],
    ["only stock", [["4/4", 6, 8, "stock"]], LOGS, TRIM, "order"],
    ["a log without its length", ORDER, [[12, ""]], TRIM, "logs, length"],
    ["no cost", ORDER, LOGS, [...TRIM, ["least", "cost"]], "logs, cost, row 1"],
    ["a cost of 0", ORDER, [[12, 8, 14, 0]], [["least", "cost"]], "logs, cost, row 1"],
    [
      "two logs of one name",
      ORDER,
      [
        [12, 8, 14, 5, "A"],
        [13, 8, 14, 5, "A"],
      ],
      TRIM,
      "logs, name, row 2",
    ],
    ["an unknown setting", ORDER, LOGS, [["colour", "red"]], "settings"],
    ["a count that is a word", [["4/4", 6, 8, "many"]], LOGS, TRIM, "order, count"],
  ] as [string, Grid, Grid, Grid, string][])("%s: #VALUE!", (_, order, logs, settings, names) => {
    const { error, message } = errorOf(plan(order, logs, settings));
    expect(error).toBe("#VALUE!");
    expect(message).toContain(names);
  });
  test.each([
    ["more than 60 logs", ORDER, Array.from({ length: 61 }, () => [12, 8]), TRIM, "60 logs and 30 lines"],
    ["more than 30 lines", Array.from({ length: 31 }, () => ["4/4", 6, 8, 1]), LOGS, TRIM, "60 logs and 30 lines"],
    ["a count over 9,999", [["4/4", 6, 8, 10000]], LOGS, TRIM, "1 to 9999"],
    ["a count that is not whole", [["4/4", 6, 8, 2.5]], LOGS, TRIM, "1 to 9999"],
    ["a length that no log has", [["4/4", 6, 400, 1]], LOGS, TRIM, "0 to 300"],
    ["a large end under the diameter", ORDER, [[12, 8, 11]], TRIM, "row 1, large end"],
    ["more taper than any log has", ORDER, [[12, 4, 40]], TRIM, "row 1, taper"],
    ["a green size far from its thickness", [["4/4", 6, 8, 1, "", "8/4"]], LOGS, TRIM, "green size"],
    ["a kerf under half a scale step", ORDER, LOGS, [["scale step", 0.5]], "kerf"],
    [
      "lengths too odd",
      Array.from({ length: 12 }, (_, at) => ["4/4", 6, 1 + at * 0.0137, 1]),
      [[12, 16]],
      TRIM,
      "whole or half feet",
    ],
    ["too fine a scale", ORDER, Array.from({ length: 60 }, () => [60, 60]), [["scale step", 0.0005]], "scale step"],
  ] as [string, Grid, Grid, Grid, string][])("%s: #N/A", (_, order, logs, settings, names) => {
    const { error, message } = errorOf(plan(order, logs, settings));
    expect(error).toBe("#N/A");
    expect(message).toContain(names);
  });
  test("a line longer than every log, or wider than every butt, is short and says why", () => {
    const answer = plan([["4/4", 6, 12, 1], ["4/4", 30, 8, 1], ...ORDER], LOGS);
    expect(rowNamed(answer, "short").slice(5, 7)).toEqual([1, 1]);
    const warnings = answer.filter(([name]) => name === "warning").map((row) => row.at(-1));
    expect(warnings).toContain("row 1 of the order is longer than every log with its trim");
    expect(warnings).toContain("row 2 of the order is wider than every butt");
  });
  test("nothing fits: a plan without logs, everything short", () => {
    const answer = plan([["4/4", 30, 8, 2]], LOGS);
    expect(answer[1]![0]).toBe("made");
    expect(rowNamed(answer, "short")[5]).toBe(2);
    expect(rowNamed(answer, "bound").at(-1)).toBe("these logs cannot give more");
  });
});

describe("ORDERPASSES", () => {
  test("says how every flitch is ripped and crosscut, and whose pieces it gives", () => {
    const answer = ORDERPASSES(ORDER, LOGS, KERF, TRIM, [[3]]);
    expect(answer[1]!.slice(0, 2)).toEqual([3, 1]);
    expect(answer[1]!.at(-1)).toMatch(/^first cut, with about .* in above it at the butt$/);
    const ripped = answer.find((row) => row[6] === "6 + 6")!;
    expect(ripped.slice(5, 9)).toEqual(["8'-2\"", "6 + 6", "8; 8", "2 of 4/4 x 6 x 8 Baker"]);
  });
  test("gives the logs one under the other, as ORDERPLAN plans them", () => {
    const all = ORDERPASSES(ORDER, LOGS, KERF, TRIM);
    const feet = all.slice(1).reduce((sum, row) => sum + (Number(row[9]) || 0), 0);
    expect(feet).toBeCloseTo(rowNamed(plan(ORDER, LOGS), "made")[4] as number, 9);
  });
  test("a log that the plan does not saw says so; one that is not there is refused", () => {
    expect(ORDERPASSES(ORDER, LOGS, KERF, TRIM, [[1]])[1]!.at(-1)).toBe("the plan does not saw this log");
    expect(errorOf(ORDERPASSES(ORDER, LOGS, KERF, TRIM, [["oak"]]))).toMatchObject({ error: "#VALUE!" });
  });
});
