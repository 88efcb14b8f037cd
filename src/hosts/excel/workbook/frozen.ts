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

const TEXT_LITERAL = /"(?:[^"]|"")*"/g;
const BOLE = /(?:\bBOLE\.|_xldudf_BOLE_)[A-Z]/i;
const OTHER_SHEET = /!/;
const SPILLED = /\$?[A-Z]{1,3}\$?\d+#/i;

/** What a cell shows while its answer is still being worked out, or when the add-in is not there. */
const UNREADY = new Set(["#BUSY!", "#GETTING_DATA", "#CONNECT!", "#NAME?"]);

/**
 * The cells that become values: every one that asks Bole, and every one that would point back at the original
 * workbook once the copy is moved into a workbook of its own, or at a spilled answer that spills no longer.
 */
export function frozenCells({ formulas, values }: Contents, outside: OutsideNames): FrozenCell[] {
  const leads =
    outside.length > 0 ? new RegExp(`(?<![\\w.])(?:${outside.map(escaped).join("|")})(?![\\w.(])`, "i") : /(?!)/;
  return formulas.flatMap((line, row) =>
    line.flatMap((formula, column): FrozenCell[] => {
      if (typeof formula !== "string" || !formula.startsWith("=")) return [];
      const code = formula.replace(TEXT_LITERAL, '""');
      const bole = BOLE.test(code);
      if (!bole && !OTHER_SHEET.test(code) && !SPILLED.test(code) && !leads.test(code)) return [];
      return [{ row, column, formula, value: values[row]?.[column], bole }];
    }),
  );
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

function escaped(name: string): string {
  return name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
