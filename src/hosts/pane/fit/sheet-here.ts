import type { Block, Cell } from "../../../formula/addresses";
import type { Table } from "../../../formula/tables";
import { Refusal } from "../sheet-host";

/** The part of a sheet that holds something, as a host tells it, and the cell that is chosen on it. */
export interface SheetHere {
  sheet: string;
  chosen: Cell;
  /** Where the two grids begin. */
  top: number;
  left: number;
  values: readonly (readonly unknown[])[];
  /** A formula, or the value of a cell that does not calculate. */
  formulas: readonly (readonly unknown[])[];
  /** The table that the chosen cell lies in, where the program knows tables. */
  table?: Table;
}

/** More would hold up the program each time another cell is chosen. */
const MOST_CELLS = 200_000;

/** A reason that is told where the columns would stand. */
export class TooLarge extends Refusal {}

/** Refuses a sheet that is too large to be looked through. */
export function mustBeReadable(sheet: string, cells: number): void {
  if (cells > MOST_CELLS)
    throw new TooLarge(
      `The sheet ${sheet} reaches over ${cells} cells. Columns are fitted on sheets of up to ${MOST_CELLS}`,
    );
}

/** The cells of a sheet by their place on it; what lies outside of the grids is blank. */
export function cellsOn({ top, left, values, formulas }: SheetHere) {
  const at = (row: number, column: number): unknown => values[row - top]?.[column - left] ?? "";
  const isFilled = (row: number, column: number) => !isBlankCell(at(row, column));
  // A formula may show nothing and is there all the same.
  const isTaken = (row: number, column: number) =>
    isFilled(row, column) || !isBlankCell(formulas[row - top]?.[column - left]);
  const filledIn = (row: number, { left: from, right: to }: Pick<Block, "left" | "right">): unknown[] => {
    const found: unknown[] = [];
    for (let column = from; column <= to; column++) if (isFilled(row, column)) found.push(at(row, column));
    return found;
  };
  return { at, isFilled, isTaken, filledIn };
}

export function isBlankCell(cell: unknown): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");
}

/** A number, a truth value, or text that begins as a size does: 8-6, 1 1/2, .5. */
export function isData(cell: unknown): boolean {
  return typeof cell === "number" || typeof cell === "boolean" || (typeof cell === "string" && /^\s*[-.\d]/.test(cell));
}

/** Text with its line breaks and double spaces made single spaces. */
export function oneLine(text: unknown): string {
  return String(text ?? "")
    .replace(/\s+/g, " ")
    .trim();
}
