import { arrayPieces, literal } from "../../formula/literals";

/**
 * What a person typed for an argument, as a piece of a formula. Cells are known when they are plain values; a
 * reference is looked up in the workbook; anything else only Excel itself can work out.
 */
export type Typed =
  | { kind: "nothing"; piece: "" }
  | { kind: "value"; piece: string; cells: unknown[][] }
  | { kind: "reference"; piece: string }
  | { kind: "expression"; piece: string };

const CELL = /\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}/;
const SHEET = /(?:'(?:[^']|'')+'!|[A-Za-z_][\w.]*!)?/;
const REFERENCE = new RegExp(`^${SHEET.source}${CELL.source}(?::${CELL.source})?$`);
const SPILL = new RegExp(`^${SHEET.source}${CELL.source}#$`);
const COLUMNS = new RegExp(`^${SHEET.source}\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3}$`);
const TABLE = /^[A-Za-z_][\w.]*\[.*\]$/;
const ARRAY = /^\{.*\}$/;

export function typed(text: string): Typed {
  const piece = text.trim();
  if (piece === "") return { kind: "nothing", piece: "" };
  if (piece.startsWith("=")) return { kind: "expression", piece: piece.slice(1) };
  if (ARRAY.test(piece)) return { kind: "value", piece, cells: arrayConstant(piece) };
  if (REFERENCE.test(piece)) return { kind: "reference", piece };
  if (SPILL.test(piece) || COLUMNS.test(piece) || TABLE.test(piece)) return { kind: "expression", piece };
  const value = literal(piece);
  return value === undefined
    ? { kind: "value", piece: `"${piece.replaceAll('"', '""')}"`, cells: [[piece]] }
    : { kind: "value", piece, cells: [[value]] };
}

/** `=BOLE.NAME(…)`; arguments left out at the end are dropped, one left out before another stays empty. */
export function formulaOf(name: string, parts: readonly Typed[]): string {
  const given = parts.map(({ kind }) => kind !== "nothing").lastIndexOf(true) + 1;
  const pieces = parts.slice(0, given).map(({ piece }) => piece);
  return `=BOLE.${name}(${pieces.join(", ")})`;
}

/** Cells of the sheet that the formula goes to are named without it, as a person would. */
export function withoutSheet(parts: readonly Typed[], sheetPrefix: string): Typed[] {
  return parts.map((part) =>
    part.kind === "reference" && sheetPrefix !== "" && part.piece.startsWith(sheetPrefix)
      ? { ...part, piece: part.piece.slice(sheetPrefix.length) }
      : part,
  );
}

/** `{1,2;3,4}` as rows of cells. */
export function arrayConstant(piece: string): unknown[][] {
  return arrayPieces(piece).map((row) => row.map((cell) => literal(cell) ?? cell));
}
