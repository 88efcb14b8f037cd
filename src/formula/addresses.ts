/** Rows and columns of cells count from 0, here and everywhere. */

/** The last row and column of a sheet. */
export const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;

/** A cell of a sheet. */
export interface Cell {
  row: number;
  column: number;
}

/** A block of cells, both corners included. */
export interface Block {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** Whether a cell lies in a block. */
export function isWithin({ row, column }: Cell, { top, left, bottom, right }: Block): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** A cell's place on its sheet as a key. */
export function placeOf({ row, column }: Cell): string {
  return `${row} ${column}`;
}

const LETTERS_IN_ALPHABET = 26;

/** Column 2 to `C`, column 27 to `AB`. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % LETTERS_IN_ALPHABET));
  return column < LETTERS_IN_ALPHABET ? letter : columnLetters(Math.floor(column / LETTERS_IN_ALPHABET) - 1) + letter;
}

/** Row 4, column 1 to `B5`. */
export function addressOf(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** Row 4, column 1 to `$B$5`, which stays put when the formula is copied. */
export function fixedAddressOf(row: number, column: number): string {
  return `$${columnLetters(column)}$${row + 1}`;
}

/** `B5` or `$B$5` to row 4, column 1; of a whole column `B` or row `5` only what it says. Read sign by sign: files have millions. */
export function cornerOf(corner: string): Partial<Cell> {
  let [column, row] = [0, 0];
  for (let at = 0; at < corner.length; at++) {
    const code = corner.charCodeAt(at);
    const letter = code >= 97 ? code - 96 : code - 64;
    if (letter >= 1 && letter <= LETTERS_IN_ALPHABET && row === 0) column = column * LETTERS_IN_ALPHABET + letter;
    else if (code >= 48 && code <= 57) row = row * 10 + code - 48;
    else if (code !== DOLLAR) return {};
  }
  if (row === 0) return column === 0 ? {} : { column: column - 1 };
  return column === 0 ? { row: row - 1 } : { row: row - 1, column: column - 1 };
}

const DOLLAR = 36;

/** `B5` or `$B$5` to row 4, column 1. */
export function cellAt(address: string): Cell {
  const { row, column } = cornerOf(address);
  if (row === undefined || column === undefined) throw new Error(`${address} is not the address of a cell`);
  return { row, column };
}

/** `A3:B6`, from whichever corner it is written, one cell, `B:C` or `4:9` to a block. */
export function blockOf(range: string): Block {
  const [from = "", to = from] = range.split(":");
  const [start, end] = [cornerOf(from), cornerOf(to)];
  if (start.row === undefined && start.column === undefined) throw new Error(`${range} is not the address of cells`);
  const [rows, columns] = [
    [start.row ?? 0, end.row ?? LAST_ROW],
    [start.column ?? 0, end.column ?? LAST_COLUMN],
  ];
  return { top: Math.min(...rows), left: Math.min(...columns), bottom: Math.max(...rows), right: Math.max(...columns) };
}

/** A cell as a block. */
export function blockAt({ row, column }: Cell): Block {
  return { top: row, left: column, bottom: row, right: column };
}

export function cellsIn({ top, left, bottom, right }: Block): number {
  return (bottom - top + 1) * (right - left + 1);
}

export function rangeOf({ top, left, bottom, right }: Block): string {
  const [from, to] = [addressOf(top, left), addressOf(bottom, right)];
  return from === to ? from : `${from}:${to}`;
}

/** The same with dollar signs, which stays put when the formula is copied. */
export function fixedRangeOf({ top, left, bottom, right }: Block): string {
  const [from, to] = [fixedAddressOf(top, left), fixedAddressOf(bottom, right)];
  return from === to ? from : `${from}:${to}`;
}

/** A sheet's name as a formula needs it in front of a cell. */
export function sheetPrefix(sheet: string): string {
  return `'${sheet.replace(/'/g, "''")}'!`;
}
