/* Cells and addresses of the stand-in for Excel; see fake-excel.ts. */

export interface FakeCell {
  value: unknown;
  formula?: string;
  format?: string;
  /** The cell whose answer spills into this one. */
  from?: string;
}

export interface FakeSheet {
  cells: Record<string, FakeCell>;
  visibility?: string;
  protected?: boolean;
  notes?: Record<string, string>;
  comments?: Record<string, string>;
  pictures?: { left: number; top: number; altTextDescription: string; base64: string }[];
  tables?: Record<string, string>;
  /** The tables that show a row of totals. */
  totals?: string[];
  validations?: Record<string, unknown>;
  looks?: Record<string, Record<string, unknown>>;
  merged?: string[];
  frozenRows?: number;
  pages?: FakePages;
}

/** A sheet's print set-up, by Excel's names for its properties. */
export type FakePages = Record<string, unknown>;

export interface FakeWorkbook {
  sheets: Record<string, FakeSheet>;
  names?: string[];
  /** What a name stands for, as `=Logs!$B$4`. */
  refersTo?: Record<string, string>;
  /** Hears that another cell was chosen. */
  listener?: () => void;
  active: string;
  chosen: string;
  /** An error that Excel answers with instead of doing anything, by its code. */
  refuses?: string;
  /** The newest version of the programming interface that this Excel has: 1.18. */
  version?: number;
}

const letters = (column: number): string =>
  (column > 25 ? letters(Math.floor(column / 26) - 1) : "") + String.fromCharCode(65 + (column % 26));
export const at = (row: number, column: number) => `${letters(column)}${row + 1}`;
export function block(area: string) {
  const [from = "", to = from] = area.replaceAll("$", "").split(":");
  const column = (cell: string) =>
    [...cell.replace(/\d/g, "")].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const row = (cell: string, whole: number) => (/\d/.test(cell) ? Number(cell.replace(/\D/g, "")) - 1 : whole);
  return { top: row(from, 0), left: column(from), bottom: row(to, 0), right: column(to) };
}
export const addresses = (area: string) => {
  const { top, left, bottom, right } = block(area);
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (_, c) => at(top + r, left + c)),
  );
};

/** What Excel makes of a typed value: an apostrophe is taken off, what looks like a date becomes one. */
const asTyped = (value: unknown, format: string | undefined): unknown => {
  if (typeof value !== "string" || format === "@") return value;
  if (value.startsWith("'")) return value.slice(1);
  return /^\d{1,2}[/-]\d{1,2}$/.test(value) ? 46146 : value;
};

/** Writes into a cell as a person would type. */
export function write(sheet: FakeSheet, address: string, value: unknown, isFormula: boolean): void {
  const format = sheet.cells[address]?.format;
  for (const [other, { from }] of Object.entries(sheet.cells)) if (from === address) delete sheet.cells[other];
  const keep = format === undefined ? {} : { format };
  if (value === "") delete sheet.cells[address];
  else if (isFormula && String(value).startsWith("="))
    sheet.cells[address] = { value: 0, formula: String(value), ...keep };
  else sheet.cells[address] = { value: asTyped(value, format), ...keep };
  if (value === "" && format) sheet.cells[address] = { value: "", format };
}
