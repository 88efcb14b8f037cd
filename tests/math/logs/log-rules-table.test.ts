import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { LOG_RULES } from "../../../src/math/logs/log-rules";
import { logRulesTable } from "../../../src/math/logs/log-rules-table";

describe("the table of log rules", () => {
  it("lists every rule with its limits and source", () => {
    const [heading, ...rows] = logRulesTable({});
    expect(heading![0]).toBe("rule");
    expect(rows.map(([name]) => name)).toEqual(Object.keys(LOG_RULES));
    for (const row of rows) expect(row.every((cell) => typeof cell === "string" && cell !== "")).toBe(true);
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
  });

  it("compares nothing with a yardstick of no board feet", () => {
    const rows = logRulesTable({ log: { diameterIn: 20, lengthFt: Number.MIN_VALUE } });
    expect(rows.flat().filter((cell) => Number.isNaN(cell))).toEqual([]);
  });
});
