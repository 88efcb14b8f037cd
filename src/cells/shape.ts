import { sizeOf, widestRow } from "./cell";
import { Unreadable } from "./error";
import type { Argument } from "./reading/argument";

/** One argument with its shape. A constant is read once: its value, or what reading it threw, serves every row. */
export interface Input {
  key: string;
  argument: Argument<unknown>;
  height: number;
  width: number;
  constant?: { value?: unknown; thrown?: unknown };
}

export function inputOf({ key, argument }: { key: string; argument: Argument<unknown> }): Input {
  return { key, argument, height: argument.cells.length, width: widestRow(argument.cells) };
}

export function commonShape(inputs: Input[]) {
  return { height: commonSize(inputs, "height", "rows"), width: commonSize(inputs, "width", "columns") };
}

function commonSize(inputs: Input[], side: "height" | "width", called: string): number {
  if (inputs.length === 0) return 1;
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

/** Refuses a range where only single values make sense. */
export function mustBeSingle(inputs: Input[]): void {
  const { height, width } = commonShape(inputs);
  const wide = height > 1 || width > 1 ? inputs.find(isSpread)! : undefined;
  if (wide) throw new Unreadable(wide.argument.name, "one cell", sizeOf(wide.argument.cells));
}

export function isSpread({ height, width }: Input): boolean {
  return height > 1 || width > 1;
}
