import { blockOf } from "./addresses";
import { literalIn, split } from "./literals";
import { sheetBefore, type Reference } from "./references";
import { tokensOf, type Token } from "./tokens";

/** What a call is given: cells, values that stand in the formula, or nothing where an argument is left out. */
export type Given = { cells: Reference } | { values: Value[][] } | undefined;
type Value = number | string | boolean;

/** A formula that is one call of a function with nothing round it, and arguments that need no calculating. */
export interface PlainCall {
  name: string;
  given: Given[];
}

/** A formula, free of names and table references, as a plain call; undefined where it is anything more. */
export function plainCall(formula: string, home: string): PlainCall | undefined {
  const tokens = withoutBrackets(tokensOf(formula.replace(/^=/, "")).filter(({ kind }) => kind !== "space"));
  const [called, opened] = tokens;
  if (called?.kind !== "function" || opened?.text !== "(" || closingOf(tokens, 1) !== tokens.length - 1)
    return undefined;
  const given: Given[] = [];
  for (const part of split(tokens.slice(2, -1), ",")) {
    const one = givenIn(withoutBrackets(part), home);
    if (one === "calculated") return undefined;
    given.push(one);
  }
  return { name: called.text.toUpperCase(), given };
}

function givenIn(tokens: readonly Token[], home: string): Given | "calculated" {
  if (tokens.length === 0) return undefined;
  const last = tokens.at(-1)!;
  if (last.kind === "cells") {
    const isAlone = tokens.length === 1 || (tokens.length === 2 && tokens[0]!.kind === "sheet");
    return isAlone
      ? { cells: { sheet: sheetBefore(tokens, tokens.length - 1) ?? home, block: blockOf(last.text) } }
      : "calculated";
  }
  const isArray = tokens[0]!.text === "{" && closingOf(tokens, 0) === tokens.length - 1;
  const rows = isArray ? split(tokens.slice(1, -1), ";").map((row) => split(row, ",")) : [[tokens]];
  const values = rows.map((row) => row.map((cell) => literalIn(cell)));
  return values.flat().includes(undefined) || values.some((row) => row.length !== values[0]!.length)
    ? "calculated"
    : { values: values as Value[][] };
}

/** `(Rate)` is Rate: a name that stands for something gets brackets round it. */
function withoutBrackets(tokens: readonly Token[]): readonly Token[] {
  let inside = tokens;
  while (inside[0]?.text === "(" && closingOf(inside, 0) === inside.length - 1) inside = inside.slice(1, -1);
  return inside;
}

/** Where the bracket closes that opens at a place; -1 where it does not. */
export function closingOf(tokens: readonly Token[], at: number): number {
  let depth = 0;
  for (let end = at; end < tokens.length; end++) {
    if (tokens[end]!.kind !== "sign") continue;
    if ("({".includes(tokens[end]!.text)) depth += 1;
    if (")}".includes(tokens[end]!.text) && --depth === 0) return end;
  }
  return -1;
}
