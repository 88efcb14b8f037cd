import { tokensOf, type Token } from "./tokens";

/** The literals of a formula: numbers, truth values, text in quotes, and array constants of them. */

/** A number, TRUE, FALSE or quoted text as a formula spells it; undefined for anything else. */
export function literal(piece: string): number | boolean | string | undefined {
  return literalIn(tokensOf(piece));
}

export function literalIn(tokens: readonly Token[]): number | boolean | string | undefined {
  const signed = tokens[0]?.text === "-" || tokens[0]?.text === "+";
  const [only, another] = signed ? tokens.slice(1) : tokens;
  if (!only || another || only.unclosed) return undefined;
  if (only.kind === "number") return tokens[0]!.text === "-" ? -Number(only.text) : Number(only.text);
  if (signed) return undefined;
  if (only.kind === "name" && /^(?:true|false)$/i.test(only.text)) return only.text.toLowerCase() === "true";
  return only.kind === "text" ? only.text.slice(1, -1).replaceAll('""', '"') : undefined;
}

/** `{1,2;3,"a, b"}` as rows of cells, each as it is spelt. */
export function arrayPieces(constant: string): string[][] {
  const inside = tokensOf(constant.trim().slice(1, -1));
  return split(inside, ";").map((row) => split(row, ",").map(spelt));
}

/** An array constant as rows of cells. */
export function arrayConstant(constant: string): (number | boolean | string)[][] {
  return arrayPieces(constant).map((row) => row.map((cell) => literal(cell) ?? cell));
}

/** The arguments of a call as they stand in it: `=BOLE.X(20, "a, b")` has two. */
export function argumentPieces(formula: string): string[] {
  const tokens = tokensOf(formula);
  const opened = tokens.findIndex(opens);
  const closed = tokens.map(closes).lastIndexOf(true);
  return split(tokens.slice(opened + 1, closed < 0 ? undefined : closed), ",").map(spelt);
}

function opens({ kind, text }: Token): boolean {
  return kind === "sign" && (text === "(" || text === "{");
}

function closes({ kind, text }: Token): boolean {
  return kind === "sign" && (text === ")" || text === "}");
}

/** Splits at a sign, but not within brackets. Nothing but spaces is no part. */
export function split(tokens: readonly Token[], separator: string): Token[][] {
  if (tokens.every(({ kind }) => kind === "space")) return [];
  const parts: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (opens(token)) depth += 1;
    if (closes(token)) depth -= 1;
    if (depth === 0 && token.kind === "sign" && token.text === separator) parts.push([]);
    else parts.at(-1)!.push(token);
  }
  return parts;
}

function spelt(tokens: readonly Token[]): string {
  return tokens
    .map(({ text }) => text)
    .join("")
    .trim();
}
