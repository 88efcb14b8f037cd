import { Unreadable } from "../error";
import { changed, isBlank, missing, type Argument, type Declaration, type Facts } from "./argument";

const ZERO_TEXT = /^\s*(?:none|-?0+(?:\.0*)?\s*(?:%|["″']|°?[a-z/]+\.?)?)\s*$/i;

/** A zero that somebody has typed as text: 0, 0%, 0 in, none. */
export function isZeroText(cell: unknown): boolean {
  return typeof cell === "string" && ZERO_TEXT.test(cell);
}

/** Lets an argument be left out or blank; the formula then gets the default, or undefined. */
export function optional<T, D extends T | undefined = undefined>(
  declaration: Declaration<T>,
  fallback?: D,
): Declaration<T | D> {
  const facts = {
    optional: true,
    default: fallback,
    zero: fallback === 0 ? ("none" as const) : declaration.facts.zero,
  };
  return mayBeBlank<T, D>({ ...declaration, facts: { ...declaration.facts, ...facts } }, fallback);
}

/** Lets the cell of an argument be blank; the formula then gets the default, or undefined. */
export function mayBeBlank<T, D extends T | undefined = undefined>(
  declaration: Declaration<T>,
  fallback?: D,
): Declaration<T | D> {
  const { zero, zeroAs } = declaration.facts;
  const whenBlank = (cell: unknown, name: string): T | D => {
    if (zero === "text" && cell === 0) throw blankOrZero(name, zeroAs ?? "0", fallback);
    return fallback as D;
  };
  return changed<T, T | D>(declaration, {}, (argument) => ({
    ...argument,
    needed: null,
    isBlank: blankCells(declaration.facts, argument.isBlank),
    whenBlank,
  }));
}

/** A zero that is typed as text was meant, unless it means that there is none. */
function blankCells({ zero, many }: Facts, ofItsOwn: (cell: unknown) => boolean): (cell: unknown) => boolean {
  if (many || !zero) return ofItsOwn;
  return zero === "none" ? (cell) => isBlank(cell) || isZeroText(cell) : isBlank;
}

function blankOrZero(name: string, zeroAs: string, fallback: unknown): Unreadable {
  const otherwise = fallback === undefined ? "the usual" : String(fallback);
  return new Unreadable(name, `"${zeroAs}" for none, or nothing for ${otherwise}`, "0, which could be a blank");
}

/** For an amount whose zero, typed either way, means that there is none, as a blank does. */
export function zeroIsNone(declaration: Declaration<number>): Declaration<number> {
  return { ...declaration, facts: { ...declaration.facts, zero: "none" } };
}

/** For a number that 0 is a real value of; a blank counts as 0. */
export function mayBeZero(declaration: Declaration<number>): Declaration<number> {
  return mayBeBlank<number, number>(zeroIsNone(declaration), 0);
}

/** For an amount that can be 0 where a blank would mean something else: a 0 has to be typed as text. */
export function zeroAsText(declaration: Declaration<number>): Declaration<number> {
  return changed(declaration, { zero: "text" }, (argument) => ({
    ...zeroRead(argument),
    whenBlank: (cell, name) => {
      throw missing(name, cell, declaration.facts.zeroAs);
    },
  }));
}

/** For an amount that must be given and of which 0 is an ordinary value: a number 0 is 0. */
export function zeroCounts(declaration: Declaration<number>): Declaration<number> {
  return changed(declaration, { zero: "number" }, (argument) => ({
    ...zeroRead(argument),
    whenBlank: (cell, name) => (cell === 0 ? 0 : argument.whenBlank(cell, name)),
  }));
}

/** An argument that reads the zeros that are typed as text. */
function zeroRead<T>(argument: Argument<T>): Argument<T> {
  return {
    ...argument,
    isBlank,
    read: (cell, name) => (isZeroText(cell) ? (0 as T) : argument.read(cell, name)),
  };
}
