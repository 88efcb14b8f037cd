import type { WorksheetFunction } from "../cells/spread";
import * as functions from ".";

export type { WorksheetFunction };

/** An argument that was left out. */
export const LEFT_OUT = undefined;

/** Every worksheet function, by the name it has in a cell; its `takes` are its arguments as they are declared. */
export const registry: Readonly<Record<string, WorksheetFunction>> = { ...functions };
