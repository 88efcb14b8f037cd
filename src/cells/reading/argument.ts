import { contentOf, gridOf, shown, type Range } from "../cell";
import { HandedOn, Unreadable } from "../error";

/** What is known of an argument before any cell is read: its page, its field in a form and its messages are made of this. */
export interface Facts {
  /** The row of the reading page that says how it is read. */
  readonly kind: string;
  /** What a bare number means. */
  readonly bare?: string;
  /** Examples of what is read, as a message offers them. */
  readonly reads?: string;
  /** The words that are allowed, where they are a set. */
  readonly words?: readonly string[];
  readonly optional: boolean;
  /** What holds where it is left out. */
  readonly default?: unknown;
  /** What a zero means, where it is a number. */
  readonly zero?: Zero;
  /** A zero as it is typed so that nobody takes it for a blank: `0%`. */
  readonly zeroAs?: string;
  /** Whether a whole range is read as one argument, and how. */
  readonly many?: "list" | "series" | "grid" | "rows" | "columns" | "settings" | "repeated";
  /** The name it was published with, where that is not its key without the unit. */
  readonly name?: string;
  /** The settings of a table of settings, each as it is declared. */
  readonly rows?: readonly SettingFacts[];
}

/** What is said of a setting beside how it is read: the group it stands in, and what holds where it is left out. */
export interface Description {
  readonly group: string;
  readonly says: string;
  readonly otherwise?: string;
}

export interface SettingFacts extends Facts, Description {
  readonly name: string;
}

/**
 * What a zero means. `blank`: the amount cannot be 0, so a 0 is a blank. `none`: a 0 and a blank are both none.
 * `text`: 0 typed as text is 0, while a number 0 could be a blank and is refused. `number`: a number 0 is 0 too.
 */
export type Zero = "blank" | "none" | "text" | "number";

/** Gives the cells of the argument of that name. */
export type Take = (name: string) => Range;

/** One argument of a worksheet function, declared once: what is known of it, and how its cells are read. */
export interface Declaration<T> {
  readonly facts: Facts;
  /** The arguments that it is made of, where it is made of several. */
  readonly parts?: Declarations<Record<string, unknown>>;
  readonly bind: (take: Take, name: string) => Argument<T>;
}

/** The arguments of a formula, by its keys. */
export type Declarations<A> = { readonly [K in keyof A]: Declaration<A[K]> };

/** An argument with the cells that it was called with. */
export interface Argument<T> {
  readonly name: string;
  /** The cells given, as a grid. A list lies in a grid of one: the whole range is its one value. */
  readonly cells: readonly (readonly unknown[])[];
  /** What must be there: a number, or a name. Null where a blank has a meaning of its own. */
  readonly needed: "number" | "name" | null;
  isBlank(cell: unknown): boolean;
  /** What a blank cell stands for, or why it cannot stand. */
  whenBlank(cell: unknown, name: string): T;
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
export function missing(name: string, cell: unknown, zeroAs?: string): Unreadable {
  const got = cell === 0 ? "a blank or 0" : isBlank(cell) ? "a blank" : shown(cell);
  const way = cell === 0 && zeroAs ? `; for 0 write "${zeroAs}"` : "";
  return new Unreadable(name, `a value (others of this row are given)${way}`, got);
}

/** An argument of one cell, which must be given. */
export function declared<T>(
  facts: Omit<Facts, "optional">,
  needed: "number" | "name",
  read: (cell: unknown, name: string) => T,
): Declaration<T> {
  const blank = facts.zero === "blank" ? isBlankOrZero : isBlank;
  const whenBlank = (cell: unknown, name: string): never => {
    throw missing(name, cell);
  };
  const bind = (take: Take, name: string): Argument<T> => ({
    name,
    cells: gridOf(take(name)),
    needed,
    isBlank: blank,
    whenBlank,
    read,
  });
  return { facts: { ...facts, optional: false }, bind };
}

/** A declaration with some of its facts changed, and what it makes of its cells. */
export function changed<T, U>(
  declaration: Declaration<T>,
  facts: Partial<Facts>,
  change: (argument: Argument<T>, take: Take) => Argument<U>,
): Declaration<U> {
  const bind = (take: Take, name: string) => change(declaration.bind(take, name), take);
  return { ...declaration, facts: { ...declaration.facts, ...facts }, bind };
}

/** A declaration that is bound to these cells, whatever its name. */
export function bound<T>(declaration: Declaration<T>, range: Range, name: string): Argument<T> {
  return declaration.bind(() => range, name);
}

/** Gives an argument the name that it was published with, where its key says another. */
export function named<T>(name: string, declaration: Declaration<T>): Declaration<T> {
  return { ...declaration, facts: { ...declaration.facts, name } };
}

/** Says of a setting what its page and its field in a form show. */
export function described<T>(declaration: Declaration<T>, description: Description): Declaration<T> {
  return { ...declaration, facts: { ...declaration.facts, ...description } };
}

/**
 * For a figure that stands once for a whole list of logs, such as the kerf: it must be there, but a row of the list
 * that has nothing else in it is still a row that nobody has filled in.
 */
export function sameForAll<T>(declaration: Declaration<T>): Declaration<T> {
  return changed(declaration, {}, (argument) => ({
    ...argument,
    needed: null,
    isBlank: () => false,
    read: (cell, name) => (argument.isBlank(cell) ? argument.whenBlank(cell, name) : argument.read(cell, name)),
  }));
}

/** The number or text in a cell. An error in it is handed on; a truth value or a blank is refused. */
export function numberOrText(cell: unknown, name: string, wanted: string): number | string {
  if (Number.isFinite(cell)) return cell as number;
  const content = contentOf(cell);
  if (typeof content === "number" || typeof content === "string") return content;
  if (content !== null && typeof content === "object") throw new HandedOn(content.error, name);
  throw new Unreadable(name, wanted, shown(cell));
}
