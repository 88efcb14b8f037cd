import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { CM_PER_IN, M_PER_FT } from "../../../src/math/units";
import { rowsOf } from "../../csv";

/** A printed scale or volume, and the log it is printed for. */
export interface Cell {
  at: string;
  diameter: number;
  length: number;
  printed: number;
}

/** The cells of a check table that carry a value. */
export function cellsOf(file: string, value: string, diameter = "diameter_in", length = "length_ft"): Cell[] {
  return rowsOf(file)
    .filter((row) => row[value] !== "")
    .map((row) => ({
      at: `${row[diameter]} x ${row[length]}`,
      diameter: Number(row[diameter]),
      length: Number(row[length]),
      printed: Number(row[value]),
    }));
}

/** Where the answers are not the printed ones, exactly. */
export function missesOf(cells: Cell[], answer: (diameter: number, length: number) => number) {
  const misses: Record<string, { printed: number; answered: number }> = {};
  for (const { at, diameter, length, printed } of cells) {
    const answered = answer(diameter, length);
    if (answered !== printed) misses[at] = { printed, answered };
  }
  return misses;
}

/** A log in centimeters and meters, as the formulas take it. */
export const metric = (cm: number, m: number) => ({ diameterIn: cm / CM_PER_IN, lengthFt: m / M_PER_FT });

/** What a formula's comment says it was checked against is what was counted here. */
export function expectSaid(file: string, words: string): void {
  const text = readFileSync(new URL(`../../../src/math/logs/${file}`, import.meta.url), "utf8");
  const checked = text.split("\n").filter((line) => line.includes("@checked"));
  expect(checked.join("\n"), `the @checked line of ${file}`).toContain(words);
}
