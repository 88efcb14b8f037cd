import { contentOf, gridOf, shown, sizeOf, widestRow } from "../cell";
import { HandedOn, Unreadable } from "../error";
import {
  bound,
  changed,
  isBlank,
  missing,
  type Argument,
  type Declaration,
  type Declarations,
  type Facts,
  type SettingFacts,
  type Take,
} from "./argument";
import { inches } from "./lengths";
import { oneOf } from "./names";
import { boundParts } from "./parts";

/** A whole range as one argument; blank cells are passed over. */
export function list<T>(each: Declaration<T>): Declaration<T[]> {
  return changed(each, { many: "list" }, (argument) => wholeRange(argument, filledIn(argument)));
}

function filledIn<T>(argument: Argument<T>) {
  return (cells: readonly unknown[], as: string): T[] =>
    cells.flatMap((cell, at) => (argument.isBlank(cell) ? [] : [argument.read(cell, `${as}, value ${at + 1}`)]));
}

/**
 * A whole range of values at equal steps, in one row or one column: a blank between two of them would shift the rest, and
 * is refused; so is a block, which would be several things read as one.
 */
export function series<T>(each: Declaration<T>): Declaration<T[]> {
  return changed(each, { many: "series" }, (argument) => {
    const isBlock = argument.cells.length > 1 && widestRow(argument.cells) > 1;
    return wholeRange(argument, (cells, as) => {
      if (isBlock) throw new Unreadable(as, "one row or one column", sizeOf(argument.cells));
      const filled = cells.map((cell) => !argument.isBlank(cell));
      const first = filled.indexOf(true);
      return cells.slice(first, filled.lastIndexOf(true) + 1).map((cell, i) => {
        const place = `value ${first + i + 1}`;
        if (!argument.isBlank(cell)) return argument.read(cell, `${as}, ${place}`);
        if (argument.needed) throw new Unreadable(as, "no gap between the values", `a blank as ${place}`);
        return argument.whenBlank(cell, `${as}, ${place}`);
      });
    });
  });
}

/** A whole range as lists, one for each row. Blank cells are passed over, and so are rows without a value. */
export function matrix<T>(each: Declaration<T>): Declaration<T[][]> {
  return changed<T, T[][]>(each, { many: "grid" }, (argument) => {
    const readRow = (cells: readonly unknown[], as: string) =>
      wholeRange({ ...argument, cells: [cells] }, filledIn(argument)).read(null, as);
    const read = (_: unknown, as: string): T[][] =>
      argument.cells.map((cells, row) => readRow(cells, `${as}, row ${row + 1}`)).filter((values) => values.length > 0);
    return { ...wholeRange<T, T[][]>(argument, () => []), read };
  });
}

/**
 * Several lists lined up row by row; a single value goes with every row. A row with none of the lists filled is passed
 * over; a row that is begun but lacks a needed cell is refused.
 */
export function rows<R extends object>(parts: Declarations<R>): Declaration<R[]> {
  const facts: Facts = { kind: "rows", optional: false, many: "rows" };
  return { facts, parts, bind: (take: Take) => rowsOf<R>(boundParts(parts, take)) };
}

function rowsOf<R extends object>(
  fields: { key: string; argument: Argument<unknown> }[],
  { begunBy, numbered = false }: RowRules = {},
): Argument<R[]> {
  const given = fields.map((field) => ({ ...field, cells: field.argument.cells.flat() }));
  const height = Math.max(...given.map(({ cells }) => cells.length));
  const name = given.map(({ argument }) => argument.name).join(" and ");

  const read = (): R[] => {
    for (const { argument, cells } of given)
      if (cells.length !== height && cells.length !== 1)
        throw new Unreadable(argument.name, `${height} cells like its neighbour, or one`, `${cells.length}`);
    const records: R[] = [];
    for (let row = 0; row < height; row++) {
      if (!given.some(({ cells, argument }) => cells.length === height && !argument.isBlank(cells[row]))) continue;
      if (given.some(({ key, cells, argument }) => key === begunBy && argument.isBlank(cells[row]))) continue;
      const record: Record<string, unknown> = numbered ? { row: row + 1 } : {};
      for (const { key, argument, cells } of given)
        record[key] = valueInRow(argument, cells[cells.length === 1 ? 0 : row], row);
      records.push(record as R);
    }
    return records;
  };
  const allBlank = () => given.every(({ cells, argument }) => cells.every(argument.isBlank));
  return { name, cells: [[null]], needed: "number", isBlank: allBlank, whenBlank: nothing, read };
}

function valueInRow(argument: Argument<unknown>, cell: unknown, row: number): unknown {
  const name = `${argument.name}, row ${row + 1}`;
  if (!argument.isBlank(cell)) return argument.read(cell, name);
  if (argument.needed)
    throw new Unreadable(
      argument.name,
      "a value in every row that is begun",
      `${cell === 0 ? "a blank or 0" : isBlank(cell) ? "a blank" : shown(cell)} in row ${row + 1}`,
    );
  return argument.whenBlank(cell, name);
}

/** Which rows of a table are read, and whether each says where it stands. */
interface RowRules {
  /** The column without which a row is passed over, such as a count. */
  begunBy?: string;
  /** Whether a record has its row, from 1 on, as `row`; rows that are passed over count too. */
  numbered?: boolean;
}

/** One range of several columns, a record a row, each with its row. */
export function numberedColumns<R extends object>(
  fields: Declarations<R>,
  begunBy?: keyof R & string,
): Declaration<(R & { row: number })[]> {
  return columnsOf<R & { row: number }>(fields as Declarations<R & { row: number }>, { begunBy, numbered: true });
}

/** One range of several columns, a record a row. Columns on the right may be left out where their field is optional. */
export function columns<R extends object>(fields: Declarations<R>): Declaration<R[]> {
  return columnsOf(fields, {});
}

function columnsOf<R extends object>(fields: Declarations<R>, rules: RowRules): Declaration<R[]> {
  const keys = Object.keys(fields) as (keyof R & string)[];
  const bind = (take: Take, name: string): Argument<R[]> => {
    const grid = gridOf(take(name));
    const column = (at: number) => grid.map((row) => [row[at] ?? null]);
    const argument = rowsOf<R>(
      keys.map((key, at) => ({ key, argument: bound(fields[key], column(at), `${name}, ${key}`) })),
      rules,
    );
    const widest = widestRow(grid);
    const read = (cell: unknown, as: string) => {
      if (widest > keys.length)
        throw new Unreadable(as, `at most ${keys.length} columns (${keys.join(", ")})`, `${widest} columns`);
      return argument.read(cell, as);
    };
    return { ...argument, name, read };
  };
  return { facts: { kind: "columns", optional: false, many: "columns", words: keys }, bind };
}

/**
 * Two columns of name and value, in any order. An unknown name is refused and the known ones listed. A row whose value is
 * blank says nothing, as if it were not there; a 0 that could be a blank is refused where a blank means something else.
 */
export function settings<R extends object>(known: Declarations<R>): Declaration<Partial<R>> {
  const title = oneOf(Object.fromEntries(Object.keys(known).map((key) => [key, []])));
  const bind = (take: Take, name: string): Argument<Partial<R>> => {
    const filled = gridOf(take(name)).filter((row) => !row.every(isBlank));
    const read = (_: unknown, as: string): Partial<R> => {
      const values: Partial<R> = {};
      for (const [heading, value = null, ...more] of filled) {
        if (!more.every(isBlank)) throw new Unreadable(as, "two columns, name and value", `${more.length + 2} columns`);
        const key = bound(title, heading, `${as} (known: ${Object.keys(known).join(", ")})`);
        if (isBlank(heading)) throw new Unreadable(as, "a setting's name before every value", "a blank");
        const setting = key.read(heading, key.name) as keyof R & string;
        if (setting in values) throw new Unreadable(as, `${setting} once`, "it twice");
        const argument = bound(known[setting], value, `${as}, ${setting}`);
        if (argument.isBlank(value)) argument.whenBlank(value, argument.name);
        else values[setting] = argument.read(value, argument.name);
      }
      return values;
    };
    return {
      name,
      cells: [[null]],
      needed: null,
      isBlank: () => filled.length === 0,
      whenBlank: () => ({}),
      read,
    };
  };
  const rows = Object.entries<Declaration<unknown>>(known).map(
    ([name, { facts }]) => ({ ...facts, name }) as SettingFacts,
  );
  return { facts: { kind: "settings", optional: true, many: "settings", words: Object.keys(known), rows }, bind };
}

/** Several sizes in one cell, as text with commas between: 4, 6, 8. */
export const inchesList: Declaration<number[]> = changed(inches, { many: "list" }, (one) => ({
  ...one,
  read: (cell: unknown, as: string) => {
    const parts = typeof cell === "string" ? cell.split(/[,;]/).filter((part) => part.trim() !== "") : [cell];
    return parts.map((part) => one.read(part, as));
  },
  whenBlank: (cell: unknown, as: string) => [one.whenBlank(cell, as)],
}));

function wholeRange<T, L extends unknown[]>(
  argument: Argument<T>,
  readAll: (cells: readonly unknown[], as: string) => L,
): Argument<L> {
  const cells = argument.cells.flat();
  const read = (_: unknown, as: string) => {
    for (const [at, cell] of cells.entries()) {
      const content = contentOf(cell);
      if (content !== null && typeof content === "object") throw new HandedOn(content.error, `${as}, value ${at + 1}`);
    }
    return readAll(cells, as);
  };
  return {
    name: argument.name,
    cells: [[null]],
    needed: argument.needed,
    isBlank: () => cells.every(argument.isBlank),
    whenBlank: argument.needed ? nothing : () => [] as unknown[] as L,
    read,
  };
}

function nothing(_: unknown, name: string): never {
  throw missing(name, null);
}
