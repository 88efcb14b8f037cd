import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../src/engine/engine";
import type { Row } from "../../../src/sheets/definition";
import { calculated, typedOver } from "./calculated";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

const day = (year: number, month: number, date: number) => new Date(Date.UTC(year, month - 1, date));

describe("board tally", () => {
  const ROWS: readonly Row[] = [
    { Board: "B1", Species: "red oak", Thickness: "8/4", Width: "8 1/2", Length: "12", Count: 3, Price: 4 },
    { Board: "B2", Species: "red oak", Thickness: "4/4", Width: "6", Length: "10" },
  ];

  it("by tally a board of 8 1/2 in by 12 ft is 8 surface feet, the half foot down", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Board tally", ROWS));
    const inTwoInches = 2 * 8;
    expect([cell("Tally bf", 1), cell("Tally bf", 2)]).toEqual([inTwoInches, (6 * 10) / 12]);
    expect(figure("Pieces")).toBe(3 + 1);
    expect(figure("Board feet")).toBe(3 * inTwoInches + 5);
    expect(figure("Value")).toBe(3 * inTwoInches * 4);
    expect(figure("Mean width")).toBeCloseTo((3 * 8.5 + 6) / 4, 12);
  });

  it("to the inch the same board is 17 feet", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Board tally", ROWS, { "To the inch": "yes" }));
    expect(cell("Exact bf", 1)).toBeCloseTo((2 * 8.5 * 12) / 12, 12);
    expect(figure("Board feet")).toBeCloseTo(3 * 17 + 5, 12);
    expect(figure("Value")).toBeCloseTo(3 * 17 * 4, 9);
  });
});

describe("slab stock", () => {
  /** The documented example of SLABFEET. */
  const SLAB = { Thickness: "8/4", W1: "30", W2: "24", W3: "21", W4: "20", W5: "25", Length: "10" };
  const ROWS: readonly Row[] = [
    { ...SLAB, Slab: "S1", Species: "red oak", Price: 12.5, State: "green" },
    { ...SLAB, Slab: "S2", Species: "red oak", Price: 20, State: "sold" },
    { Slab: "S3", Species: "red oak", Thickness: "4/4", W1: "12", W2: "24", Length: "8" },
  ];

  it("mean widths of 24 in make 40 feet in 8/4 by 10 ft; what is sold counts no more", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Slab stock", ROWS));
    const twoInches = (2 * ((30 + 24 + 21 + 20 + 25) / 5) * 10) / 12;
    const oneInch = (18 * 8) / 12;
    expect(cell("Board feet", 1)).toBeCloseTo(twoInches, 9);
    expect(cell("Board feet", 3)).toBeCloseTo(oneInch, 9);
    expect([figure("Slabs"), figure("Asked for all")]).toEqual([2, 40 * 12.5]);
    expect(figure("Board feet")).toBeCloseTo(40 + 12, 9);
    // The documented example of LUMBERWEIGHT: 500 feet of red oak weigh 2667 lb.
    expect(Number(figure("Heaviest slab, lb"))).toBeCloseTo((2667 * 40) / 500, 0);
  });

  it("writes the ticket: what was measured, how, and the price where there is one", async () => {
    const { cell } = await calculated(engine, typedOver("Slab stock", ROWS, { "Measured by": "middle" }));
    expect(cell("Ticket", 1)).toBe(
      "S1: red oak 8/4, 10 ft, widths 30 / 24 / 21 / 20 / 25 in, 35.00 bf (middle), 437.50",
    );
    expect(cell("Ticket", 3)).toBe("S3: red oak 4/4, 8 ft, widths 12 / 24 in, 12.00 bf (middle), price: ask");
  });
});

describe("stock by tag", () => {
  const ROWS: readonly Row[] = [
    { Tag: "A1", What: "log", Place: "deck", Since: day(2025, 1, 1), "Board feet": 100, Cost: 0.5 },
    { Tag: "B1", What: "boards", Place: "shed", Since: day(2024, 12, 31), "Board feet": 200, Cost: 1.25 },
    { Tag: "A2", What: "logs", Place: "deck", Since: day(2026, 1, 2), "Board feet": 10, Cost: 2 },
    { Tag: "S1", What: "slab", Place: "shed", "Board feet": 30 },
  ];

  it("counts the days to the day typed and marks what lies longer than is enough", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Stock by tag", ROWS));
    expect([1, 2, 3, 4].map((row) => cell("Days lying", row))).toEqual([365, 366, "came later", ""]);
    expect([1, 2, 3, 4].map((row) => cell("Verdict", row))).toEqual(["may lie", "OVER: saw or sell", "", ""]);
    expect(figure("Longest lying")).toBe(366);
  });

  it("adds the money up by kind, and once at each place", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Stock by tag", ROWS));
    expect(figure("Lying")).toBe(4);
    expect(figure("Board feet")).toBe(100 + 200 + 10 + 30);
    expect(figure("Worth of all")).toBe(50 + 250 + 20);
    expect(["logs", "boards", "slabs"].map((what) => figure(`Worth of ${what}`))).toEqual([50 + 20, 250, 0]);
    expect([1, 2, 3, 4].map((row) => cell("At this place", row))).toEqual([50 + 20, 250, "", ""]);
  });
});
