import { contentOf, gridOf, shown, sizeOf, widestRow, type Range } from "../cell";
import { HandedOn, Unreadable } from "../error";
import { isBlank, type Argument } from "./argument";
import { inches } from "./lengths";
import { oneOf } from "./names";

/** Readers of the fields of a record, by field. */
export type Fields<R> = { [K in keyof R]: Argument<R[K]> };
/** How each field of a record is read once its cells are known. */
export type FieldReaders<R> = { [K in keyof R]: (range: Range, name: string) => Argument<R[K]> };

/** A whole range as one argument; blank cells are passed over. */
export function list<T>(reader: Argument<T>): Argument<T[]> {
  return wholeRange(reader, (cells, as) =>
    cells.flatMap((cell, at) => (reader.isBlank(cell) ? [] : [reader.read(cell, `${as}, value ${at + 1}`)])),
  );
}

/**
 * A whole range of values at equal steps, in one row or one column: a blank between two of them would shift the rest, and
 * is refused; so is a block, which would be several things read as one.
 */
export function series<T>(reader: Argument<T>): Argument<T[]> {
  const isBlock = reader.cells.length > 1 && widestRow(reader.cells) > 1;
  return wholeRange(reader, (cells, as) => {
    if (isBlock) throw new Unreadable(as, "one row or one column", sizeOf(reader.cells));
    const filled = cells.map((cell) => !reader.isBlank(cell));
    const first = filled.indexOf(true);
    return cells.slice(first, filled.lastIndexOf(true) + 1).map((cell, i) => {
      const place = `value ${first + i + 1}`;
      if (!reader.isBlank(cell)) return reader.read(cell, `${as}, ${place}`);
      if (reader.needed) throw new Unreadable(as, "no gap between the values", `a blank as ${place}`);
      return reader.fallback as T;
    });
  });
}

/** A whole range as lists, one for each row. Blank cells are passed over, and so are rows without a value. */
export function matrix<T>(reader: Argument<T>): Argument<T[][]> {
  const read = (cell: unknown, as: string): T[][] =>
    reader.cells
      .map((cells, row) => list({ ...reader, cells: [cells] }).read(cell, `${as}, row ${row + 1}`))
      .filter((values) => values.length > 0);
  return { ...list(reader), fallback: [], read };
}

/**
 * Several lists lined up row by row; a single value goes with every row. A row with none of the lists filled is passed
 * over; a row that is begun but lacks a needed cell is refused.
 */
export function rows<R extends object>(fields: Fields<R>): Argument<R[]> {
  const given = Object.entries<Argument<unknown>>(fields).map(([key, reader]) => ({
    key,
    reader,
    cells: reader.cells.flat(),
  }));
  const height = Math.max(...given.map(({ cells }) => cells.length));
  const name = given.map(({ reader }) => reader.name).join(" and ");

  const read = (): R[] => {
    for (const { reader, cells } of given)
      if (cells.length !== height && cells.length !== 1)
        throw new Unreadable(reader.name, `${height} cells like its neighbour, or one`, `${cells.length}`);
    const records: R[] = [];
    for (let row = 0; row < height; row++) {
      if (!given.some(({ cells, reader }) => cells.length === height && !reader.isBlank(cells[row]))) continue;
      const record: Record<string, unknown> = {};
      for (const { key, reader, cells } of given)
        record[key] = valueInRow(reader, cells[cells.length === 1 ? 0 : row], row);
      records.push(record as R);
    }
    return records;
  };
  const allBlank = () => given.every(({ cells, reader }) => cells.every(reader.isBlank));
  return { name, cells: [[null]], needed: "number", fallback: undefined, isBlank: allBlank, read };
}

function valueInRow(reader: Argument<unknown>, cell: unknown, row: number): unknown {
  if (!reader.isBlank(cell)) return reader.read(cell, `${reader.name}, row ${row + 1}`);
  if (reader.needed)
    throw new Unreadable(
      reader.name,
      "a value in every row that is begun",
      `${isBlank(cell) ? "a blank" : shown(cell)} in row ${row + 1}`,
    );
  return reader.fallback;
}

/** One range of several columns, a record a row. Columns on the right may be left out where their field is optional. */
export function columns<R extends object>(range: Range, name: string, fields: FieldReaders<R>): Argument<R[]> {
  const grid = gridOf(range);
  const keys = Object.keys(fields) as (keyof R & string)[];
  const readers = keys.map((key, at) => {
    const column = grid.map((row) => [row[at] ?? null]);
    return [key, fields[key](column, `${name}, ${key}`)] as const;
  });
  const reader = rows(Object.fromEntries(readers) as unknown as Fields<R>);
  const widest = widestRow(grid);
  const read = (cell: unknown, as: string) => {
    if (widest > keys.length)
      throw new Unreadable(as, `at most ${keys.length} columns (${keys.join(", ")})`, `${widest} columns`);
    return reader.read(cell, as);
  };
  return { ...reader, name, read };
}

/** Two columns of name and value, in any order. An unknown name is refused and the known ones listed. */
export function settings<R extends object>(range: Range, name: string, known: FieldReaders<R>): Argument<Partial<R>> {
  const grid = gridOf(range);
  const names = Object.fromEntries(Object.keys(known).map((key) => [key, []]));
  const filled = grid.filter((row) => !row.every(isBlank));

  const read = (_: unknown, as: string): Partial<R> => {
    const values: Partial<R> = {};
    for (const [title, value = null, ...more] of filled) {
      if (!more.every(isBlank)) throw new Unreadable(as, "two columns, name and value", `${more.length + 2} columns`);
      const key = oneOf(names, title, `${as} (known: ${Object.keys(known).join(", ")})`);
      if (isBlank(title)) throw new Unreadable(as, "a setting's name before every value", "a blank");
      const setting = key.read(title, key.name) as keyof R & string;
      if (setting in values) throw new Unreadable(as, `${setting} once`, "it twice");
      const reader = known[setting](value, `${as}, ${setting}`);
      if (!reader.isBlank(value)) values[setting] = reader.read(value, reader.name);
      else if (reader.fallback !== undefined) values[setting] = reader.fallback;
    }
    return values;
  };
  return { name, cells: [[null]], needed: null, fallback: {}, isBlank: () => filled.length === 0, read };
}

/** Several sizes in one cell, as text with commas between: 4, 6, 8. */
export function inchesList(range: Range, name: string): Argument<number[]> {
  const one = inches(range, name);
  const read = (cell: unknown, as: string) => {
    const parts = typeof cell === "string" ? cell.split(/[,;]/).filter((part) => part.trim() !== "") : [cell];
    return parts.map((part) => one.read(part, as));
  };
  return { ...one, fallback: undefined, read };
}

function wholeRange<T>(reader: Argument<T>, readAll: (cells: readonly unknown[], as: string) => T[]): Argument<T[]> {
  const cells = reader.cells.flat();
  const allBlank = () => cells.every(reader.isBlank);
  const read = (_: unknown, as: string) => {
    for (const [at, cell] of cells.entries()) {
      const content = contentOf(cell);
      if (content !== null && typeof content === "object") throw new HandedOn(content.error, `${as}, value ${at + 1}`);
    }
    return readAll(cells, as);
  };
  return { name: reader.name, cells: [[null]], needed: reader.needed, fallback: [], isBlank: allBlank, read };
}
