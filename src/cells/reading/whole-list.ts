import { gridOf, sizeOf, widestRow, type Range } from "../cell";
import { Unreadable } from "../error";
import { missing, type Argument } from "./argument";
import type { Fields } from "./lists";

/**
 * For a figure that goes with the whole of a list, such as the thickness of a tally. A column of figures beside a column
 * of the list looks as if it went row by row, while every answer would be one of the whole list: it is refused.
 */
export function forWholeList<T>(reader: Argument<T>, list: Range, listName: string): Argument<T> {
  if (isOneCell(gridOf(list)) || isOneCell(reader.cells)) return reader;
  const read = (): never => {
    throw new Unreadable(reader.name, `one cell, for the whole of ${listName}`, sizeOf(reader.cells));
  };
  return { ...reader, cells: [[null]], needed: null, isBlank: () => false, read };
}

/** Cells that make one thing together, such as the diameter and length of a log: all of them are given, or none. */
export function together<R extends object>(fields: Fields<R>): Argument<R> {
  const readers = Object.entries<Argument<unknown>>(fields);
  const isBlank = () => readers.every(([, { cells, isBlank }]) => cells.flat().every(isBlank));
  const read = (): R => {
    const values = readers.map(([key, reader]) => [key, onlyValue(reader)] as const);
    return Object.fromEntries(values) as R;
  };
  const name = readers.map(([, { name }]) => name).join(" and ");
  return { name, cells: [[null]], needed: "number", fallback: undefined, isBlank, read };
}

function onlyValue(reader: Argument<unknown>): unknown {
  if (!isOneCell(reader.cells)) throw new Unreadable(reader.name, "one cell", sizeOf(reader.cells));
  const cell = reader.cells[0]![0];
  if (reader.isBlank(cell)) throw missing(reader.name, cell);
  return reader.read(cell, reader.name);
}

function isOneCell(cells: readonly (readonly unknown[])[]): boolean {
  return cells.length === 1 && widestRow(cells) === 1;
}
