import { scan } from "./scan";
import { blockOf, LAST_COLUMN, LAST_ROW, type Block } from "./addresses";

/** Cells that a formula points at. */
export interface Reference {
  sheet: string;
  block: Block;
}

const POINTER =
  /(?<![\w.$\\])(?:([A-Z_\u0080-\uFFFF][\w.\u0080-\uFFFF]*)?(!))?(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?\d{1,7}:\$?\d{1,7})(?![\w(.\\])/gi;

/** What a formula, free of names and table references, points at. */
export function referencesOf(formula: string, home: string): Reference[] {
  const found: Reference[] = [];
  let quotedSheet: string | undefined;
  for (const { kind, text } of scan(formula)) {
    if (kind === "plain")
      for (const [, sheet, bang, range = ""] of text.matchAll(POINTER)) {
        const on = bang ? (sheet ?? quotedSheet ?? home) : home;
        found.push({ sheet: on, block: wholeBlock(range.replace(/\$/g, "")) });
      }
    quotedSheet = kind === "sheet" ? text.slice(1, -1).replace(/''/g, "'") : undefined;
  }
  return found;
}

/** `B:C` and `4:9` reach from one end of the sheet to the other. */
function wholeBlock(range: string): Block {
  const [from = "", to = from] = range.split(":");
  if (/^\d+$/.test(from)) return { ...blockOf(`A${from}:A${to}`), right: LAST_COLUMN };
  if (/^[A-Z]+$/i.test(from)) return { ...blockOf(`${from}1:${to}1`), bottom: LAST_ROW };
  return blockOf(range);
}

/** A formula that points at another workbook, or at the same cells of several sheets. */
export function pointsOutside(formula: string): "another workbook" | "several sheets at once" | undefined {
  const pieces = scan(formula);
  for (const [at, { kind, text }] of pieces.entries()) {
    const before = pieces[at - 1];
    const inTable = before?.kind === "plain" && /[\w.\u0080-\uFFFF]$/.test(before.text);
    const next = pieces[at + 1];
    const namesSheet = next?.kind === "plain" && /^[\w.\u0080-\uFFFF]*!/.test(next.text);
    if (kind === "bracket" && !inTable && namesSheet) return "another workbook";
    if (kind === "sheet" && text.includes("[")) return "another workbook";
    if (kind === "sheet" && text.includes(":")) return "several sheets at once";
    if (kind === "plain" && /[A-Z_\u0080-\uFFFF][\w.]*:[A-Z_\u0080-\uFFFF][\w.]*!/i.test(text))
      return "several sheets at once";
  }
  return undefined;
}
