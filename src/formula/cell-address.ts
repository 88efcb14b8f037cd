/** A cell by row and column, both counted from 1. */
export interface Cell {
  row: number;
  column: number;
}

/** `C`, `AB` */
export function columnLetters(column: number): string {
  const rest = (column - 1) % 26;
  const letter = String.fromCharCode(65 + rest);
  return column > 26 ? columnLetters((column - 1 - rest) / 26) + letter : letter;
}

/** `C4` */
export function cellAddress({ row, column }: Cell): string {
  return `${columnLetters(column)}${row}`;
}

/** `$C$4` */
export function fixedAddress({ row, column }: Cell): string {
  return `$${columnLetters(column)}$${row}`;
}
