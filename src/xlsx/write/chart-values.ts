import { blockOf } from "../../formula/addresses";
import { shownIn, type Sheet } from "./book";
import type { ValuesOf } from "./chart-marks";

/** What the first column of a range shows, from the top down. */
export function valuesOn(sheet: Sheet): ValuesOf {
  return (range) => {
    const { top, bottom, left } = blockOf(range);
    return Array.from({ length: bottom - top + 1 }, (_, i) => {
      const cell = sheet.cells.get(`${top + i} ${left}`);
      const value = cell && shownIn(cell);
      return typeof value === "number" || typeof value === "string" ? value : undefined;
    });
  };
}
