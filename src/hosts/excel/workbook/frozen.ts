import { ADD_IN } from "../../../catalog/about/add-in";
import { functionsOf } from "../../../formula/functions";
import { tokensOf, type Token } from "../../../formula/tokens";
import { isOneCell } from "../../../formula/typed";

/** What stands on a sheet, cell by cell, as Excel tells it. */
export interface Contents {
  formulas: unknown[][];
  values: unknown[][];
}

/** A cell that turns from formula into value in the copy. */
export interface FrozenCell {
  row: number;
  column: number;
  formula: string;
  value: unknown;
  /** Whether the formula asks Bole; the others only lead out of their sheet. */
  bole: boolean;
}

/** Names that lead out of a sheet when a formula on it uses them: defined names, and tables of other sheets. */
export type OutsideNames = readonly string[];

/** What a cell shows while its answer is still being worked out, or when the add-in is not there. */
const UNREADY = new Set(["#BUSY!", "#GETTING_DATA", "#CONNECT!", "#NAME?"]);

/**
 * The cells that become values: every one that asks Bole, and every one that would point back at the original
 * workbook once the copy is moved into a workbook of its own, or at a spilled answer that spills no longer.
 */
export function frozenCells({ formulas, values }: Contents, outside: OutsideNames): FrozenCell[] {
  const names = new Set(outside.map((name) => name.toLowerCase()));
  return formulas.flatMap((line, row) =>
    line.flatMap((formula, column): FrozenCell[] => {
      if (typeof formula !== "string" || !formula.startsWith("=")) return [];
      const bole = functionsOf(ADD_IN, formula).length > 0;
      if (!bole && !tokensOf(formula).some((token, at, all) => leadsOut(token, all[at + 1], names))) return [];
      return [{ row, column, formula, value: values[row]?.[column], bole }];
    }),
  );
}

/** A sheet's name, a name that is known outside, or a spilled answer that spills no longer. */
function leadsOut(token: Token, next: Token | undefined, names: ReadonlySet<string>): boolean {
  if (token.kind === "name") return names.has(token.text.toLowerCase());
  return token.kind === "sheet" || (isOneCell(token) && next?.text === "#");
}

/** Cells of Bole's that have no value to keep yet. */
export function unready(cells: readonly FrozenCell[]): FrozenCell[] {
  return cells.filter(({ value }) => typeof value === "string" && UNREADY.has(value));
}

/** Cells that a spilled answer filled: they held something, and nothing is left of it once the formula is gone. */
export function emptied(before: unknown[][], after: unknown[][]): { row: number; column: number; value: unknown }[] {
  return before.flatMap((line, row) =>
    line.flatMap((value, column) => (value !== "" && after[row]?.[column] === "" ? [{ row, column, value }] : [])),
  );
}

/** A value as it must be written to stay what it is: Excel would read the text 24-1/2 as a date. */
export function asWritten(value: unknown): unknown {
  return typeof value === "string" && value !== "" && !/^#[A-Z/0]+[!?A]$/.test(value) ? `'${value}` : value;
}
