import { withStoredFunctions } from "./functions";
import { LATER_FUNCTIONS, SHEET_FUNCTIONS } from "./later-functions.table";
import { rewritten } from "./tokens";

/** By name in capitals, the name under which the file keeps it. */
const LATER = new Map([
  ...LATER_FUNCTIONS.split(" ").map((name) => [name, `_xlfn.${name}`] as const),
  ...SHEET_FUNCTIONS.split(" ").map((name) => [name, `_xlfn._xlws.${name}`] as const),
]);

/**
 * A formula as the file stores it, from the one a person types.
 *
 * `[@Length]` and `[@[Small end]]` belong to the table named. A whole table is written `Products[]`.
 */
export function storedFormula(addIn: string, typed: string, table = ""): string {
  return rewritten(withStoredFunctions(addIn, typed.replace(/^=/, "")), ({ kind, text }) => {
    if (kind === "function") return LATER.get(text.toUpperCase()) ?? text;
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
