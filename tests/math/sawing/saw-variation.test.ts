import { describe, expect, it } from "vitest";
import { sawVariation } from "../../../src/math/sawing/saw-variation";
import { rowsOf } from "../../csv";

const printed = rowsOf("sawing/size-control-readings.csv");
const readingsOf = ({ m1, m2, m3, m4 }: Record<string, string>) => [m1, m2, m3, m4].map(Number);
const boardsIn = printed.map(readingsOf);

describe("sawing variation", () => {
  it("comes out as printed for the eight boards of EM 8731, pages 21 and 22", () => {
    const figures = figuresOf(boardsIn);
    expect(figures.withinIn).toBeCloseTo(0.01594, 5);
    expect(figures.betweenIn).toBeCloseTo(0.02235, 5);
    expect(figures.totalIn).toBeCloseTo(0.02546, 5);
    // the sum of the eight averages is printed, 13.6550
    expect(figures.meanIn! * 8).toBeCloseTo(13.655, 4);
  });

  it("has the deviation of all readings as its total, not the root of the two squares, which is 0.02745", () => {
    const figures = figuresOf(boardsIn);
    const root = Math.hypot(figures.withinIn!, figures.betweenIn!);
    expect(root).toBeCloseTo(0.02745, 5);
    expect(figures.totalIn! < root - 0.001).toBe(true);
  });

  it("has each board's printed average and deviation (Table 3)", () => {
    expect(printed).toHaveLength(8);
    for (const row of printed) {
      const twice = [readingsOf(row), readingsOf(row)];
      const one = figuresOf(twice);
      expect(one.meanIn).toBeCloseTo(Number(row["avg"]), 4);
      expect(Math.abs(one.withinIn! - Number(row["sd"]))).toBeLessThan(0.0006); // printed to 0.001
      expect(one.betweenIn).toBe(0);
    }
  });

  it("needs two boards of two readings", () => {
    expect(() => sawVariation({ boardsIn: [[1, 1.1]] })).toThrow("boards: wanted 2 or more, got 1");
    expect(() => sawVariation({ boardsIn: [[1, 1.1], [1]] })).toThrow("board 2: wanted 2 or more");
    expect(() => sawVariation({ boardsIn: [[1], [1, 1.1]] })).toThrow("board 1: wanted 2 or more");
  });
});

function figuresOf(boardsIn: readonly (readonly number[])[]) {
  return sawVariation({ boardsIn });
}
