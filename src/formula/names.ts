import type { DefinedName } from "./defined-name";
import { rewritten, sheetNameIn, tokensOf } from "./tokens";

/** Names may lean on names, but not for ever: one that leans on itself stays a name, which the engine does not know. */
const DEEPEST = 20;
const LONGEST_FORMULA = 32_768;

/** Puts in the place of every name of a formula what it stands for, as the sheet with this number understands it. */
export type WithoutNames = (formula: string, sheet: number) => string;

export function withoutNames(names: readonly DefinedName[], sheets: readonly string[]): WithoutNames {
  const byName = new Map<string, DefinedName[]>();
  for (const one of names) byName.set(one.name.toLowerCase(), [...(byName.get(one.name.toLowerCase()) ?? []), one]);
  const seenFrom = (sheet: number, word: string) => {
    const same = byName.get(word.toLowerCase()) ?? [];
    return same.find((name) => name.sheet === sheet) ?? same.find((name) => name.sheet === undefined);
  };
  const numberOf = (sheet: string) => sheets.findIndex((one) => one.toLowerCase() === sheet.toLowerCase());
  const once = (formula: string, home: number) =>
    rewritten(formula, ({ kind, text }, at, all) => {
      if (kind === "sheet" && all[at + 1]?.kind === "name")
        return seenFrom(numberOf(sheetNameIn(text)), all[at + 1]!.text) ? "" : text;
      // Brackets behind a name make it a table's.
      if (kind !== "name" || all[at + 1]?.kind === "bracket") return text;
      const before = all[at - 1];
      const name = seenFrom(before?.kind === "sheet" ? numberOf(sheetNameIn(before.text)) : home, text);
      return name ? inBrackets(name.refersTo) : text;
    });
  return (formula, sheet) => {
    if (byName.size === 0) return formula;
    let current = formula;
    for (let depth = 0; depth < DEEPEST; depth++) {
      const next = once(current, sheet);
      if (next === current) return current;
      if (next.length > LONGEST_FORMULA) break;
      current = next;
    }
    return formula;
  };
}

/** One reference with its sheet needs no brackets round it, nor does what is called. */
function inBrackets(refersTo: string): string {
  const text = refersTo.trim().replace(/^=/, "");
  const tokens = tokensOf(text);
  const oneReference = tokens.length === 2 && tokens[0]?.kind === "sheet" && tokens[1]?.kind === "cells";
  const isCalled = tokens[0]?.kind === "function" && /^(?:_xlfn\.)?LAMBDA$/i.test(tokens[0].text);
  return oneReference || isCalled ? text : `(${text})`;
}
