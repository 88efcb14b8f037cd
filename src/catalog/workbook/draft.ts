import type { Workbook } from "exceljs";

/** What a formula answered: one value, or a table's error such as #N/A. */
export type Answer = string | number | boolean | { error: string };

/** The answers of a recalculated workbook: a grid for each formula cell, one by one for a plain one. */
export type Answers = ReadonlyMap<string, readonly (readonly Answer[])[]>;

/** A formula that answers a table and spills from its cell. */
export interface Spill {
  sheet: string;
  address: string;
}

/** The formula that a table's column fills into a new row. */
export interface ColumnFormula {
  table: string;
  column: string;
  formula: string;
}

/** A line of a chart: x and y are ranges on `sheet`, such as A5:A9. */
export interface ChartLine {
  name: string;
  x: string;
  y: string;
  look: "dots" | "line";
}

/** A chart over cells of one sheet, placed from one cell to another. */
export interface Chart {
  sheet: string;
  title: string;
  xTitle: string;
  yTitle: string;
  from: { column: number; row: number };
  to: { column: number; row: number };
  lines: ChartLine[];
}

/** A workbook being drawn. The first drawing knows no answers; the second is drawn with those of the first. */
export interface Draft {
  book: Workbook;
  answers: Answers;
  spills: Spill[];
  columnFormulas: ColumnFormula[];
  charts: Chart[];
}

/** The name under which a cell's answer is kept. */
export function placeOf(sheet: string, address: string): string {
  return `${sheet}!${address}`;
}
