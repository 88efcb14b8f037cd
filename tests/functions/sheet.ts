import { expect } from "vitest";

/** What a test's sheet holds in a cell. */
export type Cell = unknown;

/** One cell as a host hands it over. */
export const one = (cell: Cell): Cell[][] => [[cell]];

/** A column of cells. */
export const column = (...cells: Cell[]): Cell[][] => cells.map((cell) => [cell]);

/** A cell error whose message matches. */
export const refused = (error: string, message: RegExp) => ({
  error,
  message: expect.stringMatching(message) as string,
});

/** What the error in the first cell of an answer says. */
export const messageOf = (answer: Cell[][]) => (answer[0]![0] as { message: string }).message;

/** A column of a spilled table, by its heading. */
export function under(table: Cell[][], heading: string): Cell[] {
  const at = table[0]!.indexOf(heading);
  return table.slice(1).map((row) => row[at]);
}

/** The row of a spilled table that begins so. */
export const rowNamed = (table: Cell[][], name: string) => table.find((row) => row[0] === name);
