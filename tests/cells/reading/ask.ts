import { expect } from "vitest";
import type { Declaration } from "../../../src/cells/read";
import { table, type WorksheetFunction } from "../../../src/cells/spread";

/** What a cell becomes under a declaration, or its error. */
export function readOne<T>(declaration: Declaration<T>, cell: unknown): unknown {
  return table({ size: declaration }, ({ size }) => [[size as never]])([[cell]])[0]![0];
}

/** The message with which a declaration refuses a cell. */
export function refused(declaration: Declaration<unknown>, cell: unknown): string {
  const answer = readOne(declaration, cell) as { error: string; message: string };
  expect(answer).toMatchObject({ error: "#VALUE!" });
  expect(answer.message).toMatch(/^size.*: wanted .*, got /);
  return answer.message;
}

export const refusal = (message: RegExp) => ({ error: "#VALUE!", message: expect.stringMatching(message) as string });

/** A function called with whatever a host may hand over, single cells as they are. */
export const called = (formula: WorksheetFunction, ...cells: unknown[]) =>
  formula(...cells.map((cell) => (Array.isArray(cell) ? (cell as unknown[][]) : [[cell]])));
