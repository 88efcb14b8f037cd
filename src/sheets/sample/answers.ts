import { addressOf } from "../../formula/addresses";
import { isFormula, type Cell, type Sheet } from "../../xlsx/write/book";
import { type Answer, type Answers, type Draft, placeOf } from "./draft";

/** What a recalculated workbook shows in a cell; "" in a blank one. */
export type Shows = (sheet: string, address: string) => Answer;

/** Reads off the answer of every formula cell of a draft, spilled ones whole. */
export function readAnswers(draft: Draft, shows: Shows): Answers {
  const answers = new Map<string, Answer[][]>();
  const spills = new Set(draft.spills.map(({ sheet, address }) => placeOf(sheet, address)));
  for (const sheet of draft.book.sheets)
    for (const cell of sheet.cells.values()) {
      if (!isFormula(cell.content)) continue;
      const address = addressOf(cell.row, cell.column);
      const place = placeOf(sheet.name, address);
      answers.set(place, spills.has(place) ? spilledFrom(cell, sheet, shows) : [[shows(sheet.name, address)]]);
    }
  return answers;
}

/**
 * A spilled answer has no empty cell in its first row and no row that is all empty, and it ends where something else was
 * drawn.
 */
function spilledFrom({ row: top, column: left }: Cell, sheet: Sheet, shows: Shows): Answer[][] {
  const shown = (row: number, column: number) => shows(sheet.name, addressOf(row, column));
  const ours = (row: number, column: number) =>
    (sheet.cells.get(`${row} ${column}`)?.content ?? null) === null && shown(row, column) !== "";
  let width = 1;
  while (ours(top, left + width)) width++;
  const columns = Array.from({ length: width }, (_, i) => left + i);
  let height = 1;
  while (columns.some((column) => ours(top + height, column))) height++;
  return Array.from({ length: height }, (_, i) => columns.map((column) => shown(top + i, column)));
}
