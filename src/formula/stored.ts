import { withStoredFunctions } from "./functions";
import { rewritten } from "./tokens";

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

/**
 * A formula as the file stores it, from the one a person types.
 *
 * `[@Length]` and `[@[Small end]]` belong to the table named. A whole table is written `Products[]`.
 */
export function storedFormula(addIn: string, typed: string, table = ""): string {
  return rewritten(withStoredFunctions(addIn, typed.replace(/^=/, "")), ({ kind, text }) => {
    if (kind === "function") return LATER_FUNCTIONS[text] ?? text;
    return kind === "bracket" ? thisRow(text, table) : text;
  });
}

/** `[@Dia]`, `[@[Small end]]` and `[@[A]:[B]]` written out. */
function thisRow(brackets: string, table: string): string {
  const column = /^\[@(.+)\]$/s.exec(brackets)?.[1];
  if (column === undefined) return brackets;
  return `${table}[[#This Row],${column.startsWith("[") ? column : `[${column}]`}]`;
}

/** A formula as Excel shows it: it leaves the empty brackets of a whole table away. */
export function shownFormula(typed: string): string {
  return rewritten(typed, ({ kind, text }) => (kind === "bracket" && text === "[]" ? "" : text));
}
