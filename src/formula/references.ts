import { blockOf, type Block } from "./addresses";
import { sheetNameIn, tokensOf, type Token } from "./tokens";

/** Cells that a formula points at. */
export interface Reference {
  sheet: string;
  block: Block;
}

/** What a formula, free of names and table references, points at. */
export function referencesOf(formula: string, home: string): Reference[] {
  return referencesIn(tokensOf(formula), home);
}

export function referencesIn(tokens: readonly Token[], home: string): Reference[] {
  return tokens.flatMap(({ kind, text }, at) =>
    kind === "cells" ? [{ sheet: sheetBefore(tokens, at) ?? home, block: blockOf(text) }] : [],
  );
}

/** The sheet that is named in front of a token, if one is. */
export function sheetBefore(tokens: readonly Token[], at: number): string | undefined {
  const before = tokens[at - 1];
  return before?.kind === "sheet" ? sheetNameIn(before.text) : undefined;
}

/** A formula that points at another workbook, or at the same cells of several sheets. */
export function pointsOutside(formula: string): "another workbook" | "several sheets at once" | undefined {
  const sheets = tokensOf(formula).filter(({ kind }) => kind === "sheet");
  if (sheets.some(({ text }) => text.includes("["))) return "another workbook";
  return sheets.some(({ text }) => text.includes(":")) ? "several sheets at once" : undefined;
}

/**
 * A formula that finds its cells only while it calculates, so that nobody can say beforehand what it leans on: by their
 * address in words, by steps from another cell, or with a function at the end of a range.
 */
export function searchesCells(formula: string): boolean {
  return searchesCellsIn(tokensOf(formula));
}

export function searchesCellsIn(tokens: readonly Token[]): boolean {
  return tokens.some(
    ({ kind, text }) =>
      (kind === "function" && /^(?:INDIRECT|OFFSET)$/i.test(text)) || (kind === "sign" && text === ":"),
  );
}
