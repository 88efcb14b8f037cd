import { cornerOf } from "../../formula/addresses";
import { arrayConstant, literal } from "../../formula/literals";
import { tokensOf } from "../../formula/tokens";

/**
 * What a person typed for an argument, as a piece of a formula. Cells are known when they are plain values; a
 * reference is looked up in the workbook; anything else only Excel itself can work out.
 */
export type Typed =
  | { kind: "nothing"; piece: "" }
  | { kind: "value"; piece: string; cells: unknown[][] }
  | { kind: "reference"; piece: string }
  | { kind: "expression"; piece: string };

export function typed(text: string): Typed {
  const piece = text.trim();
  if (piece === "") return { kind: "nothing", piece: "" };
  if (piece.startsWith("=")) return { kind: "expression", piece: piece.slice(1) };
  if (piece.startsWith("{") && piece.endsWith("}")) return { kind: "value", piece, cells: arrayConstant(piece) };
  const pointing = kindOfPointer(piece);
  if (pointing) return { kind: pointing, piece };
  const value = literal(piece);
  return value === undefined
    ? { kind: "value", piece: `"${piece.replaceAll('"', '""')}"`, cells: [[piece]] }
    : { kind: "value", piece, cells: [[value]] };
}

/** Cells by their address are looked up; whole columns, a spilled answer or a table's column are for Excel to work out. */
function kindOfPointer(piece: string): "reference" | "expression" | undefined {
  const tokens = tokensOf(piece);
  const [first, second, third] = tokens[0]?.kind === "sheet" ? tokens.slice(1) : tokens;
  if (third) return undefined;
  if (first?.kind === "name" && second?.kind === "bracket") return "expression";
  if (first?.kind !== "cells") return undefined;
  if (second) return second.text === "#" ? "expression" : undefined;
  const { row, column } = cornerOf(first.text.split(":")[0]!);
  return row === undefined || column === undefined ? "expression" : "reference";
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
