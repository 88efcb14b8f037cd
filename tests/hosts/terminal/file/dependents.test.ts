import { describe, expect, it } from "vitest";
import { blockOf } from "../../../../src/formula/addresses";
import { dependentsOf, type Node } from "../../../../src/hosts/terminal/file/dependents";

describe("who leans on whom", () => {
  const node = (sheet: string, range: string, ...references: string[]): Node => ({
    sheet,
    block: blockOf(range),
    references: references.map((one) => ({ sheet: one.split("!")[0]!, block: blockOf(one.split("!")[1]!) })),
  });
  const scale = node("Logs", "C1");
  const twice = node("Logs", "D1", "Logs!C1");
  const sum = node("Sums", "A1", "logs!A1:D5000");
  const total = node("Sums", "B1", "Sums!A1");
  const other = node("Sums", "C1", "Logs!A1:B5000", "Sums!D1");
  const spill = node("Plan", "A1:B9", "Sums!B1");
  const under = node("Plan", "D1", "Plan!B9");
  it("is followed over sheets, long ranges and spilled answers, and not further", () => {
    expect(dependentsOf([scale], [other, under, spill, total, sum, twice, scale])).toEqual([
      under,
      spill,
      total,
      sum,
      twice,
    ]);
  });
  it("ends where formulas lean on each other", () => {
    const [one, two] = [node("L", "A1", "L!B1"), node("L", "B1", "L!A1")];
    expect(dependentsOf([one], [one, two])).toEqual([two]);
  });
});
