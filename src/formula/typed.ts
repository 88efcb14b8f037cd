import { cellAt } from "./addresses";
import { typedFunction, withCalls } from "./functions";
import { sheetBefore } from "./references";
import { rewritten, type Token } from "./tokens";

/** What Excel puts in front of newer functions and of the names of LET and LAMBDA in the file. */
const NEWER_NAME = /^(?:_xlfn\.(?:_xlws\.)?|_xlpm\.|_xlws\.)/i;

/** A formula from the file as a person would type it: `_xldudf_BOLE_EMC(…)` is BOLE.EMC(…), ANCHORARRAY(D1) is D1#. */
export function asTyped(stored: string): string {
  const plainNames = stored.includes("_xl")
    ? rewritten(stored, ({ kind, text }) =>
        kind === "name" || kind === "function" ? typedFunction(text.replace(NEWER_NAME, "")) : text,
      )
    : stored;
  if (!/ANCHORARRAY|SINGLE/i.test(plainNames)) return `=${plainNames.replace(/^=/, "")}`;
  const spills = withSpills(plainNames, (pointer) => `${pointer.map(({ text }) => text).join("")}#`);
  const typed = rewritten(spills, ({ kind, text }) => (kind === "function" && /^SINGLE$/i.test(text) ? "" : text));
  return `=${typed.replace(/^=/, "")}`;
}

/** `D1#` or `Plan!D1#` to the range that the formula in D1 fills; `spillOf` knows it. */
export function expandSpills(
  formula: string,
  spillOf: (sheet: string | undefined, row: number, column: number) => string,
): string {
  return rewritten(formula, (token, at, all) => {
    if (token.kind === "sign" && token.text === "#" && isOneCell(all[at - 1])) return "";
    if (!isOneCell(token) || all[at + 1]?.text !== "#") return token.text;
    const { row, column } = cellAt(token.text);
    return spillOf(sheetBefore(all, at), row, column);
  });
}

/** A stored formula in which pointers at some spilled answers, ANCHORARRAY(D1), are the ranges that those filled. */
export function withFixedSpills(
  stored: string,
  spillOf: (sheet: string | undefined, row: number, column: number) => string | undefined,
): string {
  if (!/ANCHORARRAY/i.test(stored)) return stored;
  return withSpills(stored, (pointer) => {
    const { row, column } = cellAt(pointer.at(-1)!.text);
    const range = spillOf(sheetBefore(pointer, pointer.length - 1), row, column);
    return range === undefined ? undefined : `${pointer.length > 1 ? pointer[0]!.text : ""}${range}`;
  });
}

/** Puts every `ANCHORARRAY(Plan!D1)` otherwise, given what stands in its brackets. */
function withSpills(formula: string, put: (pointer: readonly Token[]) => string | undefined): string {
  return withCalls(formula, (name, inside) => {
    const isPointer = isOneCell(inside.at(-1)) && inside.slice(0, -1).every(({ kind }) => kind === "sheet");
    return isPointer && /^(?:_xlfn\.)?ANCHORARRAY$/i.test(name) ? put(inside) : undefined;
  });
}

export function isOneCell(token: Token | undefined): token is Token {
  return token?.kind === "cells" && !token.text.includes(":");
}
