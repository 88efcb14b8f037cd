import * as functions from ".";

/** A worksheet function as a host calls it: each argument is rows of cells. */
export type WorksheetFunction = (...ranges: unknown[][][]) => unknown[][];

/** An argument that was left out; to every function it is the same as a blank cell. */
export const LEFT_OUT: unknown[][] = [[null]];

/** Every worksheet function, by the name it has in a cell. */
export const registry: Readonly<Record<string, WorksheetFunction>> = { ...functions };
