import { contentOf, gridOf, shown, type Range } from "../cell";
import { HandedOn, Unreadable } from "../error";

/** How one argument of a worksheet function is read from its cells. */
export interface Argument<T> {
  readonly name: string;
  /** The cells given, as a grid. A list lies in a grid of one: the whole range is its one value. */
  readonly cells: readonly (readonly unknown[])[];
  /** What must be there: a number that cannot be 0 in nature, or a name. Null where a blank has a meaning of its own. */
  readonly needed: "number" | "name" | null;
  /** What a blank stands for, where nothing is needed. */
  readonly fallback: T | undefined;
  isBlank(cell: unknown): boolean;
  /** The value of a cell that is not blank, in base units. Throws Unreadable or HandedOn under the name given. */
  read(cell: unknown, name: string): T;
}

/** A blank cell: null on the web, 0 on the desktop, and text of spaces. */
export function isBlank(cell: unknown): boolean {
  return cell === null || cell === undefined || cell === 0 || (typeof cell === "string" && cell.trim() === "");
}

/**
 * For an amount that cannot be 0: a 0 is a blank, because the desktop hands a blank over as 0. In a column formatted as
 * Text it is written 0, 0% or 0 in.
 */
export function isBlankOrZero(cell: unknown): boolean {
  return isBlank(cell) || (typeof cell === "string" && /^\s*0+(?:\.0*)?\s*(?:%|["″']|[a-z]+\.?)?\s*$/i.test(cell));
}

/** What a message says to a cell without a value that is needed. */
export function missing(name: string, cell: unknown): Unreadable {
  const got = cell === 0 ? "a blank or 0" : isBlank(cell) ? "a blank" : shown(cell);
  return new Unreadable(name, "a value (others of this row are given)", got);
}

/** An argument that must be given. */
export function argument<T>(
  range: Range,
  name: string,
  needed: "number" | "name",
  read: (cell: unknown, name: string) => T,
): Argument<T> {
  return { name, cells: gridOf(range), needed, fallback: undefined, isBlank, read };
}

/** Lets an argument be left out or blank; the formula then gets the default, or undefined. */
export function optional<T, D extends T | undefined = undefined>(reader: Argument<T>, fallback?: D): Argument<T | D> {
  return { ...reader, needed: null, fallback } as Argument<T | D>;
}

/** For a number that 0 is a real value of; a blank counts as 0. */
export function mayBeZero(reader: Argument<number>): Argument<number> {
  return { ...reader, needed: null, fallback: 0 };
}

/**
 * For a figure that stands once for a whole list of logs, such as the kerf: it must be there, but a row of the list
 * that has nothing else in it is still a row that nobody has filled in.
 */
export function sameForAll<T>(reader: Argument<T>): Argument<T> {
  const read = (cell: unknown, name: string): T => {
    if (reader.isBlank(cell)) throw missing(name, cell);
    return reader.read(cell, name);
  };
  return { ...reader, needed: null, isBlank: () => false, read };
}

/** The number or text in a cell. An error in it is handed on; a truth value or a blank is refused. */
export function numberOrText(cell: unknown, name: string, wanted: string): number | string {
  if (Number.isFinite(cell)) return cell as number;
  const content = contentOf(cell);
  if (typeof content === "number" || typeof content === "string") return content;
  if (content !== null && typeof content === "object") throw new HandedOn(content.error, name);
  throw new Unreadable(name, wanted, shown(cell));
}
