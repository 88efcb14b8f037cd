import type * as EngineFormula from "@univerjs/engine-formula";
import { isMended } from "./mended";

/**
 * Keeps a sheet of 100,000 rows from taking the square of their number. The engine keeps an index of what cells hold,
 * for look-ups, and at every answer seeks the cell's former one among all of its column. Here an answer in a column that
 * nothing has looked up yet is left out of the index, since the first look-up reads the column itself; and one that was
 * looked up already makes the index void, so that the next look-up reads it afresh.
 */
export function keepTallColumnsQuick({ CELL_INVERTED_INDEX_CACHE: index }: typeof EngineFormula): void {
  if (isMended(index)) return;
  const set = index.set;
  index.set = function (unit, sheet, column, value, row, isAnswer = false) {
    if (!isAnswer) set.call(this, unit, sheet, column, value, row);
    else if (!this.shouldContinueBuildingCache(unit, sheet, column, row)) this.clear();
  };
}
