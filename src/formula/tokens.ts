import { cornerOf, LAST_COLUMN, LAST_ROW } from "./addresses";

/** A word of a formula. Everything that stands in a formula is in one of them, so that all of them make it again. */
export interface Token {
  kind: Kind;
  text: string;
  /** A quote or bracket that is opened and not closed; it runs to the end. */
  unclosed?: boolean;
}

/**
 * - text: `"in quotes"`
 * - sheet: what stands before a cell or a name to say where it is, with its `!`: `'Log book'!`, `Jan:Dec!`, `[1]!`
 * - bracket: what is asked of a table: `[[#This Row],[Dia]]`
 * - cells: `B5`, `$A$1:C9`, `B:C`, `4:9`
 * - function: a name with a `(` behind it, which is a sign of its own
 * - name: any other name, TRUE and FALSE too
 * - error: `#REF!`
 * - sign: one of all the others
 */
type Kind = "text" | "sheet" | "bracket" | "cells" | "function" | "name" | "number" | "error" | "space" | "sign";

const NAME = /[A-Z_\\\u0080-\uFFFF][\w.\\?\u0080-\uFFFF]*/iy;
const CELLS =
  /(?:\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?[1-9]\d{0,6}:\$?[1-9]\d{0,6})(?![\w.(!\\?\u0080-\uFFFF])/iy;
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?/iy;
const ERROR = /#[A-Z][A-Z0-9_]*(?:\/[A0]!?)?[!?]?/iy;
const SPACE = /\s+/y;
/** What follows the brackets of another workbook's number: `[1]Prices!`, `[1]!`. */
const SHEET_BEHIND_BRACKETS = /[\w.\u0080-\uFFFF]*!/y;
const LAST_OF_SEVERAL_SHEETS = /:[A-Z_\u0080-\uFFFF][\w.\u0080-\uFFFF]*!/iy;

/** Takes a formula apart, with or without an equals sign in front. Every sign is looked at a few times at most. */
export function tokensOf(formula: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at, tokens.at(-1));
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

/** A formula with some of its tokens put otherwise; the rest of it stays as it is written. */
export function rewritten(formula: string, put: (token: Token, at: number, all: readonly Token[]) => string): string {
  const tokens = tokensOf(formula);
  return tokens.map((token, at) => put(token, at, tokens)).join("");
}

/** The name that a sheet token says: `'it''s'!` says it's. */
export function sheetNameIn(token: string): string {
  const named = token.replace(/!$/, "");
  return named.startsWith("'") ? named.replace(/^'|'$/g, "").replace(/''/g, "'") : named;
}

function tokenAt(formula: string, at: number, before: Token | undefined): Token {
  const first = formula[at]!;
  if (first === '"') return quoted(formula, at, '"', "text");
  if (first === "'") return quotedSheet(formula, at);
  if (first === "[") return brackets(formula, at, before);
  if (first === "#") return matched("error", ERROR, formula, at) ?? { kind: "sign", text: first };
  return (
    cellsAt(formula, at) ??
    nameAt(formula, at) ??
    matched("number", NUMBER, formula, at) ??
    matched("space", SPACE, formula, at) ?? { kind: "sign", text: first }
  );
}

function matched(kind: Kind, pattern: RegExp, formula: string, at: number): Token | undefined {
  pattern.lastIndex = at;
  const text = pattern.exec(formula)?.[0];
  return text === undefined ? undefined : { kind, text };
}

/** Cells that a sheet has; XFE1 and A9999999 are names. */
function cellsAt(formula: string, at: number): Token | undefined {
  const token = matched("cells", CELLS, formula, at);
  return token?.text.split(":").every(isOnSheet) ? token : undefined;
}

function isOnSheet(corner: string): boolean {
  const { row = 0, column = 0 } = cornerOf(corner);
  return row <= LAST_ROW && column <= LAST_COLUMN;
}

function nameAt(formula: string, at: number): Token | undefined {
  const name = matched("name", NAME, formula, at);
  if (!name) return undefined;
  const end = at + name.text.length;
  if (formula[end] === "(") return { ...name, kind: "function" };
  if (formula[end] === "!") return { kind: "sheet", text: `${name.text}!` };
  const last = matched("sheet", LAST_OF_SEVERAL_SHEETS, formula, end);
  return last ? { kind: "sheet", text: name.text + last.text } : name;
}

function quotedSheet(formula: string, at: number): Token {
  const sheet = quoted(formula, at, "'", "sheet");
  return formula[at + sheet.text.length] === "!" ? { ...sheet, text: `${sheet.text}!` } : sheet;
}

function quoted(formula: string, at: number, quote: string, kind: "text" | "sheet"): Token {
  let end = at + 1;
  for (;;) {
    end = formula.indexOf(quote, end);
    if (end < 0) return { kind, text: formula.slice(at), unclosed: true };
    if (formula[end + 1] !== quote) return { kind, text: formula.slice(at, end + 1) };
    end += 2;
  }
}

/** Brackets nest: Logs[[#This Row],[Dia]]. An apostrophe takes the meaning from the sign after it. */
function brackets(formula: string, at: number, before: Token | undefined): Token {
  let depth = 0;
  for (let end = at; end < formula.length; end++) {
    if (formula[end] === "'") end += 1;
    else if (formula[end] === "[") depth += 1;
    else if (formula[end] === "]" && --depth === 0) {
      const text = formula.slice(at, end + 1);
      const sheet = before?.kind === "name" ? undefined : matched("sheet", SHEET_BEHIND_BRACKETS, formula, end + 1);
      return sheet ? { kind: "sheet", text: text + sheet.text } : { kind: "bracket", text };
    }
  }
  return { kind: "bracket", text: formula.slice(at), unclosed: true };
}
