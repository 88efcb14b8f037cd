import type { Block } from "../formula/addresses";
import type { SheetCell, SheetRow, SheetXml } from "./sheet-cells";

/** The cell at a place; undefined where the sheet says nothing of it. */
export function findCell({ rows }: SheetXml, row: number, column: number): SheetCell | undefined {
  const own = findRow(rows, row);
  const cell = own?.cells[firstFrom(own.cells, (one) => one.column >= column)];
  return cell?.column === column ? cell : undefined;
}

export function findRow(rows: readonly SheetRow[], row: number): SheetRow | undefined {
  const found = rows[firstFrom(rows, (one) => one.row >= row)];
  return found?.row === row ? found : undefined;
}

/** The cells of a block that the sheet says anything of, row by row. */
export function* cellsWithin({ rows }: SheetXml, { top, left, bottom, right }: Block): Generator<SheetCell> {
  for (let at = firstFrom(rows, ({ row }) => row >= top); at < rows.length && rows[at]!.row <= bottom; at++) {
    const { cells } = rows[at]!;
    for (let one = firstFrom(cells, ({ column }) => column >= left); one < cells.length; one++) {
      if (cells[one]!.column > right) break;
      yield cells[one]!;
    }
  }
}

/** The place of the first of a list in order that is far enough; the list's length where none is. */
export function firstFrom<T>(list: readonly T[], isFarEnough: (one: T) => boolean): number {
  let [from, to] = [0, list.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (isFarEnough(list[middle]!)) to = middle;
    else from = middle + 1;
  }
  return from;
}
