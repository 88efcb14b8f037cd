import { columnLetters, cornerOf } from "./addresses";
import { rewritten } from "./tokens";

/** The formula as it reads some rows further down and columns further right. What a dollar sign stands before stays. */
export function movedFormula(formula: string, down: number, right: number): string {
  return rewritten(formula, ({ kind, text }) =>
    kind === "cells"
      ? text
          .split(":")
          .map((corner) => moved(corner, down, right))
          .join(":")
      : text,
  );
}

const CORNER = /^(\$?)([A-Z]*)(\$?)(\d*)$/i;

function moved(corner: string, down: number, right: number): string {
  const [, first = "", letters = "", second = "", digits = ""] = CORNER.exec(corner) ?? [];
  // Of a whole row `$5` the only dollar sign is the row's.
  const [columnFixed, rowFixed] = letters ? [first, second] : ["", first];
  const { row = 0, column = 0 } = cornerOf(corner);
  const toLetters = letters && !columnFixed ? columnLetters(column + right) : letters;
  const toDigits = digits && !rowFixed ? String(row + 1 + down) : digits;
  return `${columnFixed}${toLetters}${rowFixed}${toDigits}`;
}
