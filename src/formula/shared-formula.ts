import { rewritePlain } from "./scan";
import { columnLetters } from "./cell-address";
import { placeOf } from "./addresses";

/**
 * Cells, whole columns and whole rows in a formula; a function's name such as LOG10( is none. What a dollar sign
 * stands before stays when the formula is copied.
 */
const REFERENCE =
  /(?<![\w.$\\])(\$?[A-Z]{1,3}\$?\d{1,7}|\$?[A-Z]{1,3}(?=:\$?[A-Z]{1,3}(?![\w(.]))|(?<=(?<![\w.])\$?[A-Z]{1,3}:)\$?[A-Z]{1,3}|\$?\d{1,7}(?=:\$?\d)|(?<=(?<![\w.])\$?\d{1,7}:)\$?\d{1,7})(?![\w(.!\\])/g;

/** The formula as it reads some rows further down and columns further right. */
export function movedFormula(formula: string, down: number, right: number): string {
  return rewritePlain(formula, (plain) => plain.replace(REFERENCE, (reference) => moved(reference, down, right)));
}

function moved(reference: string, down: number, right: number): string {
  const [, columnFixed = "", letters = "", rowFixed = "", digits = ""] =
    /^(\$?)([A-Z]*)(\$?)(\d*)$/.exec(reference) ?? [];
  // Of a whole row `$5` the only dollar sign is the row's.
  const rowStays = rowFixed !== "" || (letters === "" && columnFixed !== "");
  const column = letters && !columnFixed ? columnLetters(placeOf(`${letters}1`).column + 1 + right) : letters;
  const row = digits && !rowStays ? String(Number(digits) + down) : digits;
  return `${columnFixed}${column}${rowFixed}${row}`;
}
