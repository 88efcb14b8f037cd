import { argumentPieces, arrayPieces, literal as plainLiteral } from "../../src/formula/literals";
import * as registry from "../../src/functions";

type WorksheetFunction = (...cells: unknown[][][]) => unknown[][];

/** A formula of literals, such as =BOLE.NAME(20, "Doyle", {1;2}), taken apart into its function and its arguments. */
export function literalCall(formula: string): { name: string; given: unknown[][][] } {
  const [, name = ""] = /^=BOLE\.([A-Z0-9]+)\([\s\S]*\)$/.exec(formula) ?? [];
  if (!name) throw new Error(`Not a call of one of Bole's functions: ${formula}`);
  return { name, given: argumentPieces(formula).map(argument) };
}

/** What the function of a formula of literals answers. */
export function answerTo(formula: string): unknown[][] {
  const { name, given } = literalCall(formula);
  const called = (registry as unknown as Record<string, WorksheetFunction>)[name];
  if (!called) throw new Error(`No function ${name}`);
  return called(...given);
}

/** The value of one literal: a number, text, a truth value, or nothing. */
export function literal(written: string): unknown {
  const text = written.trim();
  if (text === "") return null;
  if (/^-?[\d.]+%$/.test(text)) return Number(text.slice(0, -1)) / 100;
  const value = plainLiteral(text);
  if (value === undefined) throw new Error(`Not a literal: ${written}`);
  return value;
}

/** A grid of literals: {1,2;3,4}, or a single one. */
export function argument(written: string): unknown[][] {
  const text = written.trim();
  if (!text.startsWith("{")) return [[literal(text)]];
  return arrayPieces(text).map((row) => row.map(literal));
}
