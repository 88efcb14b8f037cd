/** Native functions that came after the file format did: the file keeps them under a longer name. */
const LATER_FUNCTIONS: Readonly<Record<string, string>> = {
  IFNA: "_xlfn.IFNA",
  MAXIFS: "_xlfn.MAXIFS",
  MINIFS: "_xlfn.MINIFS",
  TEXTJOIN: "_xlfn.TEXTJOIN",
  XLOOKUP: "_xlfn.XLOOKUP",
  FILTER: "_xlfn._xlws.FILTER",
  SORT: "_xlfn._xlws.SORT",
};

const TEXT_LITERAL = /("(?:[^"]|"")*")/;

/**
 * A formula as the file stores it, from the one a person types.
 *
 * Excel keeps an add-in's function under `_xldudf_`: only so does it find the add-in again when the file is opened.
 * `[@Length]` and `[@[Small end]]` belong to the table named. A whole table is written `Products[]`.
 */
export function storedFormula(typed: string, table = ""): string {
  return typed
    .replace(/^=/, "")
    .split(TEXT_LITERAL)
    .map((piece, i) => (i % 2 === 1 ? piece : storedPiece(piece, table)))
    .join("");
}

/** A formula as Excel shows it: it leaves the empty brackets of a whole table away. */
export function shownFormula(typed: string): string {
  return typed.replace(/\[\]/g, "");
}

/** The names of our functions in a formula, in order, each once. */
export function functionsIn(typed: string): string[] {
  const code = typed.split(TEXT_LITERAL).filter((_, i) => i % 2 === 0);
  return [...new Set([...code.join("").matchAll(/BOLE\.([A-Z0-9]+)/g)].map((match) => match[1]!))];
}

function storedPiece(piece: string, table: string): string {
  return piece
    .replace(/\bBOLE\.([A-Z0-9]+)\(/g, "_xldudf_BOLE_$1(")
    .replace(/\b([A-Z]+)\(/g, (call, name: string) => (LATER_FUNCTIONS[name] ? `${LATER_FUNCTIONS[name]}(` : call))
    .replace(/\[@\[([^\]]+)\]:\[([^\]]+)\]\]/g, `${table}[[#This Row],[$1]:[$2]]`)
    .replace(/\[@\[([^\]]+)\]\]/g, `${table}[[#This Row],[$1]]`)
    .replace(/\[@([^\]]+)\]/g, `${table}[[#This Row],[$1]]`);
}
