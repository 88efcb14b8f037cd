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
