import { columnLetters, type Block } from "../../../formula/addresses";
import { cellsOn, isData, type SheetHere } from "./sheet-here";

/** A row that begins so adds up the others. */
const TOTALS = /^\s*(?:(?:grand|sub|all)[ -]?)?(?:totals?|sums?|average|avg|mean|count)\b/i;

/** A formula that adds up a piece of its own column. */
const ADDING_UP = /\b(?:SUM|SUBTOTAL|AVERAGE|COUNTA?|AGGREGATE)\(/i;

/** A sum of decimals comes out a hair beside what a person wrote down. */
const HAIR = 1e-9;

/** The rows of a box that are filled in. Blank ones, notes and those that add up others are none of them. */
export function dataRows(box: Block, here: SheetHere): number[] {
  const { filledIn } = cellsOn(here);
  const rows: number[] = [];
  for (let row = box.top; row <= box.bottom; row++) {
    const cells = filledIn(row, box);
    const isNote = box.right - box.left >= 2 && cells.length === 1 && !isData(cells[0]);
    if (cells.length > 0 && !isNote && !addsUp(row, rows, box, here)) rows.push(row);
  }
  return rows;
}

function addsUp(row: number, before: readonly number[], box: Block, here: SheetHere): boolean {
  const { filledIn } = cellsOn(here);
  const [first] = filledIn(row, box);
  if (typeof first === "string" && TOTALS.test(first)) return true;
  return sumsByFormula(row, box, here) || sumsByHand(row, before, box, here);
}

/** Whether a cell adds up cells of its own column: `=SUM(B4:B9)` in B10. */
function sumsByFormula(row: number, box: Block, here: SheetHere): boolean {
  for (let column = box.left; column <= box.right; column++) {
    const formula = here.formulas[row - here.top]?.[column - here.left];
    if (typeof formula !== "string" || !formula.startsWith("=") || !ADDING_UP.test(formula)) continue;
    const letters = columnLetters(column);
    if (new RegExp(`(?<![A-Z])${letters}\\d+:${letters}\\d`, "i").test(formula.replaceAll("$", ""))) return true;
    // A table's own totals name the column instead; [@Dia] is the row's own cell.
    if (formula.includes("[") && !/@|#This Row/i.test(formula)) return true;
  }
  return false;
}

/** Whether a row without a name holds nothing but the sums of the columns above, written down as numbers. */
function sumsByHand(row: number, before: readonly number[], box: Block, here: SheetHere): boolean {
  const { at, isFilled, filledIn } = cellsOn(here);
  if (before.length < 2 || isFilled(row, box.left) || filledIn(row, box).some((cell) => typeof cell !== "number"))
    return false;
  for (let column = box.left; column <= box.right; column++) {
    if (!isFilled(row, column)) continue;
    const above = before.map((one) => at(one, column)).filter((cell) => typeof cell === "number");
    const sum = above.reduce((total, one) => total + one, 0);
    if (above.length < 2 || Math.abs(sum - Number(at(row, column))) > HAIR * Math.abs(sum)) return false;
  }
  return true;
}
