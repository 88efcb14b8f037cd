import { blockOf, type Block } from "../formula/addresses";
import { movedFormula } from "../formula/moved";
import type { SheetCell, SheetXml } from "./sheet-cells";
import { attribute } from "./xml";

/** A formula of the file, as it reads in its cell. */
export interface CellWithFormula {
  cell: SheetCell;
  /** As the file stores it, without the equals sign. */
  stored: string;
  /** The block that an array formula fills; nothing for a plain one. */
  fills?: Block;
  /** Its block grows and shrinks with the answer, as Excel's newer array formulas do. */
  dynamic: boolean;
}

/** The formulas of a sheet. One that was copied stands in the file once, and reads otherwise in every cell. */
export function formulasIn({ rows }: SheetXml): CellWithFormula[] {
  const masters = new Map<string, { stored: string; row: number; column: number }>();
  return rows.flatMap(({ cells }) =>
    cells.flatMap((cell): CellWithFormula[] => {
      const { row, column, formula } = cell;
      if (!formula) return [];
      const type = attribute(formula.attributes, "t");
      // A what-if table's formula is none that reads like one.
      if (type === "dataTable") return [];
      const group = type === "shared" ? attribute(formula.attributes, "si") : undefined;
      if (group !== undefined && formula.text) masters.set(group, { stored: formula.text, row, column });
      const master = group === undefined || formula.text ? undefined : masters.get(group);
      const stored = master ? movedFormula(master.stored, row - master.row, column - master.column) : formula.text;
      if (!stored) return [];
      const ref = type === "array" ? attribute(formula.attributes, "ref") : undefined;
      const dynamic = type === "array" && attribute(cell.attributes, "cm") !== undefined;
      return [{ cell, stored, dynamic, ...(ref ? { fills: blockOf(ref) } : {}) }];
    }),
  );
}
