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
  const read = (cell: unknown, name: string) => (isZero(cell) ? 0 : reader.read(cell, name));
  return { ...reader, needed: null, fallback: 0, read };
}

/**
 * For a figure that stands once for a whole list of logs, such as the kerf: it must be there, but a row of the list
 * that has nothing else in it is still a row that nobody has filled in.
 */
export function sameForAll<T>(reader: Argument<T>): Argument<T> {
  const read = (cell: unknown, name: string): T => {
    if (reader.isBlank(cell)) throw new Unreadable(name, "a value (others of this row are given)", "a blank");
    return reader.read(cell, name);
  };
  return { ...reader, needed: null, isBlank: () => false, read };
}

function isZero(cell: unknown): boolean {
  return typeof cell === "string" && /^\s*0+(?:\.0*)?\s*%?\s*$/.test(cell);
}

/** The number or text in a cell. An error in it is handed on; a truth value or a blank is refused. */
export function numberOrText(cell: unknown, name: string, wanted: string): number | string {
  if (Number.isFinite(cell)) return cell as number;
  const content = contentOf(cell);
  if (typeof content === "number" || typeof content === "string") return content;
  if (content !== null && typeof content === "object") throw new HandedOn(content.error, name);
  throw new Unreadable(name, wanted, shown(cell));
}
