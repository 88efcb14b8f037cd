import { rewritePlain, scan } from "./scan";

/** What Excel puts in front of names in the file: add-in functions, newer functions, names of LET and LAMBDA. */
const ADD_IN_FUNCTION = /_xldudf_([A-Z0-9]+)_([A-Z0-9]+)/gi;
const NEWER_NAME = /_xlfn\.(?:_xlws\.)?|_xlpm\.|_xlws\./gi;

/** A formula from the file as a person would type it: `_xldudf_BOLE_EMC(…)` is BOLE.EMC(…). */
export function asTyped(stored: string): string {
  const plainNames = rewritePlain(stored, (plain) => plain.replace(ADD_IN_FUNCTION, "$1.$2").replace(NEWER_NAME, ""));
  return `=${unwrapSpills(plainNames).replace(/^=/, "")}`;
}

/** In the file `D1#` is ANCHORARRAY(D1) and `@x` is SINGLE(x). */
function unwrapSpills(formula: string): string {
  return rewritePlain(formula, (plain) => plain.replace(/\bSINGLE\(/g, "(")).replace(
    /\bANCHORARRAY\(((?:'(?:[^']|'')*'!|[A-Z0-9_.]+!)?\$?[A-Z]{1,3}\$?\d+)\)/gi,
    "$1#",
  );
}

/** `D1#` or `Plan!D1#` to the range that the formula in D1 fills; `spillOf` knows it. */
export function expandSpills(formula: string, spillOf: (sheet: string | undefined, cell: string) => string): string {
  let sheet: string | undefined;
  const parts = scan(formula).map((piece) => {
    if (piece.kind === "sheet") sheet = piece.text.slice(1, -1).replace(/''/g, "'");
    if (piece.kind !== "plain") return piece.text;
    const changed = piece.text.replace(
      /(^!|[A-Z_][A-Z0-9_.]*!)?(\$?[A-Z]{1,3}\$?\d+)#/gi,
      (_, prefix: string | undefined, cell: string) => {
        const named = prefix === "!" ? sheet : prefix?.slice(0, -1);
        return `${prefix ?? ""}${spillOf(named, cell.replace(/\$/g, ""))}`;
      },
    );
    sheet = undefined;
    return changed;
  });
  return parts.join("");
}
