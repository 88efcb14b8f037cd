import { contentOf } from "./cell";
import { cellError, HandedOn, Unreadable, type CellError } from "./error";
import type { Argument } from "./reading/argument";

/** What an answered cell holds. */
export type Answer = number | string | boolean | CellError;

/** The arguments of a formula, each with the way it is read. */
export type Arguments<A> = { [K in keyof A]: Argument<A[K]> };

/** A cell of a table as a formula gives it: nothing for an empty cell, an error for a cell without an answer. */
export type TableCell = number | string | boolean | undefined | Error;

/**
 * Lifts a formula over ranges. One value goes with every row, a column with a column, a row against a column makes a
 * grid; the answer has the shape of the input. A row that throws becomes a cell error in its place, and a row whose
 * numbers are all blank answers 0.
 */
export function spread<A extends object>(
  reads: Arguments<A>,
  formula: (given: A) => number | string | boolean,
): Answer[][] {
  try {
    const inputs = inputsOf(reads);
    const { height, width } = commonShape(inputs);
    return Array.from({ length: height }, (_, row) =>
      Array.from({ length: width }, (_, column) => answerAt(inputs, row, column, formula)),
    );
  } catch (thrown) {
    return [[cellError(thrown)]];
  }
}

/** Answers one table for single values and lists. An empty cell is "", because Excel would show null as 0. */
export function table<A extends object>(reads: Arguments<A>, formula: (given: A) => TableCell[][]): Answer[][] {
  try {
    const inputs = inputsOf(reads);
    const { height, width } = commonShape(inputs);
    if (height > 1 || width > 1) {
      const wide = inputs.find(({ height, width }) => height > 1 || width > 1)!;
      throw new Unreadable(wide.argument.name, "one cell", `${wide.height} × ${wide.width} cells`);
    }
    if (isUnfilled(inputs, 0, 0)) return [[0]];
    return formula(valuesAt(inputs, 0, 0) as A).map((row) => row.map(sound));
  } catch (thrown) {
    return [[cellError(thrown)]];
  }
}

/** One argument with its shape. A constant is read once: its value, or what reading it threw, serves every row. */
interface Input {
  key: string;
  argument: Argument<unknown>;
  height: number;
  width: number;
  constant?: { value?: unknown; thrown?: unknown };
}

function inputsOf(reads: object): Input[] {
  return Object.entries<Argument<unknown>>(reads as Record<string, Argument<unknown>>).map(([key, argument]) => ({
    key,
    argument,
    height: argument.cells.length,
    width: Math.max(...argument.cells.map((row) => row.length)),
  }));
}

function commonShape(inputs: Input[]) {
  return { height: commonSize(inputs, "height", "rows"), width: commonSize(inputs, "width", "columns") };
}

function commonSize(inputs: Input[], side: "height" | "width", called: string): number {
  const largest = inputs.reduce((most, input) => (input[side] > most[side] ? input : most));
  const other = inputs.find((input) => input[side] > 1 && input[side] !== largest[side]);
  if (other)
    throw new Unreadable(
      other.argument.name,
      `${largest[side]} ${called} like ${largest.argument.name}, or one`,
      `${other[side]} ${called}`,
    );
  return largest[side];
}

function answerAt<A>(inputs: Input[], row: number, column: number, formula: (given: A) => number | string | boolean) {
  try {
    return isUnfilled(inputs, row, column) ? 0 : sound(formula(valuesAt(inputs, row, column) as A));
  } catch (thrown) {
    return cellError(thrown);
  }
}

function cellAt({ argument, height, width }: Input, row: number, column: number): unknown {
  return argument.cells[height === 1 ? 0 : row]![width === 1 ? 0 : column];
}

/**
 * Whether the row is one that nobody has filled in yet: every number is blank that cannot be 0 in nature, or, where a
 * function asks for none, every name. An error in any cell is handed on before that.
 */
function isUnfilled(inputs: Input[], row: number, column: number): boolean {
  const numbers = tally("number");
  if (numbers.given > 0) return false;
  const names = numbers.blank > 0 ? numbers : tally("name");
  if (names.given > 0 || names.blank === 0) return false;
  for (const input of inputs) handOnError(input, cellAt(input, row, column));
  return true;

  function tally(needed: "number" | "name") {
    let given = 0;
    let blank = 0;
    for (const input of inputs) {
      if (input.argument.needed !== needed) continue;
      if (input.argument.isBlank(cellAt(input, row, column))) blank++;
      else given++;
    }
    return { given, blank };
  }
}

function handOnError({ argument }: Input, cell: unknown): void {
  const content = contentOf(cell);
  if (content !== null && typeof content === "object") throw new HandedOn(content.error, argument.name);
}

function valuesAt(inputs: Input[], row: number, column: number): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  for (const input of inputs) values[input.key] = valueAt(input, row, column);
  return values;
}

function valueAt(input: Input, row: number, column: number): unknown {
  if (input.height > 1 || input.width > 1) return valueOf(input.argument, cellAt(input, row, column));
  input.constant ??= readOnce(input);
  if ("thrown" in input.constant) throw input.constant.thrown;
  return input.constant.value;
}

function readOnce(input: Input): { value?: unknown; thrown?: unknown } {
  try {
    return { value: valueOf(input.argument, cellAt(input, 0, 0)) };
  } catch (thrown) {
    return { thrown };
  }
}

function valueOf(argument: Argument<unknown>, cell: unknown): unknown {
  if (!argument.isBlank(cell)) return argument.read(cell, argument.name);
  if (argument.needed) throw new Unreadable(argument.name, "a value, since others of this row are given", "a blank");
  return argument.fallback;
}

/** No NaN and no infinity leaves by this door, and no undefined. */
function sound(answer: TableCell): Answer {
  if (typeof answer === "number") {
    if (Number.isFinite(answer)) return answer;
    return Number.isNaN(answer)
      ? cellError(new Error("an answer that is not a number"))
      : { error: "#N/A", message: "The answer is too large to be a number" };
  }
  if (answer instanceof Error) return cellError(answer);
  return answer ?? "";
}
