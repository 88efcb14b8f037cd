import { cellAddress } from "./cell-address";

/** The last row and column of a sheet, counted from 0. */
export const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;

/** A block of cells, counted from 0, both corners included. */
export interface Block {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** Row 4, column 1 to `B5`. */
export function addressOf(row: number, column: number): string {
  return cellAddress({ row: row + 1, column: column + 1 });
}

/** `B5` or `$B$5` to row 4, column 1. */
export function placeOf(address: string): { row: number; column: number } {
  const [, letters = "", digits = ""] = /^\$?([A-Z]{1,3})\$?(\d+)$/i.exec(address.trim()) ?? [];
  if (!letters) throw new Error(`${address} is not the address of a cell`);
  const column = [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
}

/** `A3:B6`, from whichever corner it is written, or one cell, to a block. */
export function blockOf(range: string): Block {
  const [from = "", to = from] = range.split(":");
  const [start, end] = [placeOf(from), placeOf(to)];
  return {
    top: Math.min(start.row, end.row),
    left: Math.min(start.column, end.column),
    bottom: Math.max(start.row, end.row),
    right: Math.max(start.column, end.column),
  };
}

export function rangeOf({ top, left, bottom, right }: Block): string {
  const [from, to] = [addressOf(top, left), addressOf(bottom, right)];
  return from === to ? from : `${from}:${to}`;
}

/** The same with dollar signs, which stays put when the formula is copied. */
export function fixedRangeOf(block: Block): string {
  return rangeOf(block).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}

/** A sheet's name as a formula needs it in front of a cell. */
export function sheetPrefix(sheet: string): string {
  return `'${sheet.replace(/'/g, "''")}'!`;
}
