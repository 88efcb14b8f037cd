import { NoAnswer } from "../math/errors";

export type ErrorCode =
  | "#VALUE!"
  | "#N/A"
  | "#REF!"
  | "#DIV/0!"
  | "#NUM!"
  | "#NAME?"
  | "#NULL!"
  | "#SPILL!"
  | "#CALC!"
  | "#FIELD!"
  | "#BLOCKED!"
  | "#CONNECT!"
  | "#BUSY!"
  | "#UNKNOWN!";

/** A cell error as plain data; a host turns it into its own. */
export interface CellError {
  error: ErrorCode;
  message: string;
}

export function isCellError(cell: unknown): cell is CellError {
  return typeof cell === "object" && cell !== null && "error" in cell;
}

/** A cell that cannot be read as its argument. The worksheet shows #VALUE!. */
export class Unreadable extends Error {
  override name = "Unreadable";
  constructor(argument: string, wanted: string, got: string) {
    super(`${argument}: wanted ${wanted}, got ${got}`);
  }
}

/** An error found in an input cell, which is handed on unchanged. */
export class HandedOn extends Error {
  override name = "HandedOn";
  constructor(
    readonly code: ErrorCode,
    argument: string,
  ) {
    super(`${argument}: the cell holds ${code}`);
  }
}

/** The one way out: whatever was thrown becomes one cell error with a message. */
export function cellError(thrown: unknown): CellError {
  if (thrown instanceof NoAnswer) return { error: "#N/A", message: thrown.message };
  if (thrown instanceof Unreadable) return { error: "#VALUE!", message: thrown.message };
  if (thrown instanceof HandedOn) return { error: thrown.code, message: thrown.message };
  const what = thrown instanceof Error ? thrown.message : String(thrown);
  return { error: "#VALUE!", message: `A fault in Bole itself, please report it: ${what}` };
}
