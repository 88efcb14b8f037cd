import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { LOG_RULES } from "../../../src/math/logs/log-rules";
import { logRulesTable } from "../../../src/functions/logs/log-rules-table";

describe("the table of log rules", () => {
  it("lists every rule with its limits and source", () => {
    const [heading, ...rows] = logRulesTable({});
    expect(heading![0]).toBe("rule");
    expect(rows.map(([name]) => name)).toEqual(Object.keys(LOG_RULES));
    for (const row of rows) expect(row.every((cell) => typeof cell === "string" && cell !== "")).toBe(true);
  });

  it("shows the smallest and the largest log of each rule, in inches and feet as far as it has limits", () => {
    const limits = Object.fromEntries(logRulesTable({}).map(([rule, , , ...cells]) => [rule, cells.slice(0, 2)]));
    expect(limits["Doyle"]).toEqual(["4 in", "no limit"]);
    expect(limits["Scribner"]).toEqual(["4 in", "40 ft"]);
    expect(limits["Scribner Decimal C"]).toEqual(["6 in, 6 ft", "20 in, 16 ft"]);
  });

  it("puts a log's board feet side by side and says whom each rule favors", () => {
    const [heading, ...rows] = logRulesTable({ log: { diameterIn: 12, lengthFt: 16 } });
    const row = (name: string) => rows.find(([rule]) => rule === name)!;
    expect(heading!.slice(0, 4)).toEqual(["rule", "board feet", "percent against International 1/4", "favors"]);
    expect(row("International 1/4").slice(2, 4)).toEqual([0, "neither"]);
    expect(row("Doyle")[1]).toBe(64);
    expect(row("Doyle")[2]).toBeCloseTo(-33.96, 2); // 64 against 96.92
    expect(row("Doyle")[3]).toBe("buyer");
    expect(row("International 1/8")[3]).toBe("seller");
  });

  it("shows why a rule has no answer in its own cell, and still answers the others", () => {
    const rows = logRulesTable({ log: { diameterIn: 30, lengthFt: 16 } });
    const cell = (name: string) => rows.find(([rule]) => rule === name)![1];
    expect(cell("Scribner Decimal C")).toBeInstanceOf(NoAnswer);
    expect(cell("Vermont")).toBeInstanceOf(NoAnswer);
    expect(cell("Two-thirds")).toBeInstanceOf(NoAnswer); // it is measured at mid-length
    expect(cell("Doyle")).toBe(676);
    const row = rows.find(([rule]) => rule === "Vermont")!;
    expect(row.slice(2, 4)).toEqual(["", ""]); // no percent, and nobody is favored
    expect(row).toHaveLength(rows[0]!.length);
  });

  it("compares nothing with a yardstick of no board feet", () => {
    const rows = logRulesTable({ log: { diameterIn: 20, lengthFt: Number.MIN_VALUE } });
    expect(rows.flat().filter((cell) => Number.isNaN(cell))).toEqual([]);
  });
});
