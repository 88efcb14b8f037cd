import { rangeOf } from "../../../formula/addresses";
import { findCell } from "../../../xlsx/find-cells";
import { cellsIn, heldOf, same, type Result } from "./calculate";
import { sameValue } from "./plan";
import type { CellChange } from "../../../xlsx/sheet-edit";
import type { Sheet } from "./workbook";

/** What becomes of the cells of a sheet, one change for each cell. */
export class Changes {
  private readonly byPlace = new Map<string, CellChange>();

  constructor(readonly sheet: Sheet) {}

  /** Adds to what is known to become of a cell. A cell that one answer leaves and another one fills is filled. */
  add(change: CellChange): void {
    const known = this.byPlace.get(placeKey(change));
    const filled = known?.value !== undefined && known.value !== null && change.value === null;
    this.byPlace.set(placeKey(change), { ...known, ...change, ...(filled ? { value: known.value } : {}) });
  }

  /** Puts an answer into its cells; cells that show it already are left alone. */
  show(result: Result): void {
    for (const change of changesFor(result, this.sheet)) this.add(change);
  }

  list(): CellChange[] {
    return [...this.byPlace.values()];
  }
}

function changesFor(result: Result, { xml }: Sheet): CellChange[] {
  const { formula, block, values } = result;
  const changes: CellChange[] = [];
  for (const { row, column } of cellsIn(block)) {
    const answer = values[row - block.top]?.[column - block.left] ?? "";
    const home = row === formula.row && column === formula.column;
    const before = findCell(xml, row, column)?.value ?? null;
    const equal = sameValue(answer, before);
    const resized = home && formula.dynamic && !same(block, formula.block);
    if (equal && !resized) continue;
    const value = equal ? {} : { value: heldOf(answer) };
    changes.push({ row, column, ...value, ...(resized ? { ref: rangeOf(block) } : {}) });
  }
  return [...changes, ...emptied(result)];
}

/** Cells that the last answer filled and this one does not. */
function emptied({ formula, block }: Result): CellChange[] {
  const inside = ({ row, column }: { row: number; column: number }) => row <= block.bottom && column <= block.right;
  return cellsIn(formula.block).flatMap((place) => (inside(place) ? [] : [{ ...place, value: null }]));
}

function placeKey({ row, column }: { row: number; column: number }): string {
  return `${row} ${column}`;
}
