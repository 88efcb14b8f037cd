import { cellAt } from "../../../../src/formula/addresses";
import type { Table } from "../../../../src/formula/tables";
import type { SheetHere } from "../../../../src/hosts/pane/fit/sheet-here";

export type Content = string | number | boolean;

/** A sheet as a host would tell it. `=SUM(B2:B3)->423` is a cell with that formula that shows 423. */
export function sheetOf(
  cells: readonly (readonly Content[])[],
  chosen: string,
  { from = "A1", table }: { from?: string; table?: Table } = {},
): SheetHere {
  const { row: top, column: left } = cellAt(from);
  const parts = cells.map((line) => line.map((cell) => /^(=.*)->(.*)$/s.exec(String(cell))));
  const values = cells.map((line, r) => line.map((cell, c) => valueOf(parts[r]![c]?.[2]) ?? cell));
  const formulas = cells.map((line, r) => line.map((cell, c) => parts[r]![c]?.[1] ?? cell));
  return { sheet: "Mine", chosen: cellAt(chosen), top, left, values, formulas, ...(table && { table }) };
}

function valueOf(shown: string | undefined): Content | undefined {
  return shown === undefined || Number.isNaN(Number(shown)) ? shown : Number(shown);
}
