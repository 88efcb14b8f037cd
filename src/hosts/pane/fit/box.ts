import type { Block, Cell } from "../../../formula/addresses";
import { cellsOn, isData, type SheetHere } from "./sheet-here";

/**
 * The filled cells that hang together with the chosen one. One blank row within is passed over, for people leave them
 * between the logs of two days; a blank column ends the box, for a table beside another begins behind one. Nothing where
 * the chosen cell and its neighbours are blank.
 */
export function boxAround(here: SheetHere): Block | undefined {
  const start = startOf(here);
  if (!start) return undefined;
  const box = { top: start.row, left: start.column, bottom: start.row, right: start.column };
  while (grown(box, here)) continue;
  return box;
}

/** The chosen cell, or the nearest filled one beside it where it is blank. */
function startOf(here: SheetHere): Cell | undefined {
  const { isFilled } = cellsOn(here);
  const { row, column } = here.chosen;
  const around = [
    [row, column],
    [row, column - 1],
    [row, column + 1],
    [row - 1, column],
    [row + 1, column],
  ] as const;
  const found = around.find(([r, c]) => isFilled(r, c));
  return found && { row: found[0], column: found[1] };
}

/** Grows a box by a row or a column, and says whether there was one. */
function grown(box: Block, here: SheetHere): boolean {
  const { isFilled, filledIn } = cellsOn(here);
  const columnHolds = (column: number) => {
    for (let row = box.top; row <= box.bottom; row++) if (isFilled(row, column)) return true;
    return false;
  };
  const rowHolds = (row: number) => filledIn(row, box).length > 0;
  if (columnHolds(box.left - 1)) box.left -= 1;
  else if (columnHolds(box.right + 1)) box.right += 1;
  else if (rowHolds(box.top - 1)) box.top -= 1;
  else if (rowHolds(box.bottom + 1)) box.bottom += 1;
  // What stands over a blank row above the headings is a title, or another table.
  else if (rowHolds(box.top - 2) && filledIn(box.top, box).some(isData)) box.top -= 2;
  // What begins with words below a blank row is a note, or another table's headings.
  else if (filledIn(box.bottom + 2, box).some(isData)) box.bottom += 2;
  else return false;
  return true;
}
