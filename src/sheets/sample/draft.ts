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

interface AnyChart {
  /** The sheet it stands on, from one cell to another. */
  sheet: string;
  from: { column: number; row: number };
  to: { column: number; row: number };
  title: string;
  xTitle: string;
  yTitle: string;
  /** The sheet that holds its values; the one it stands on when left out. */
  data?: string;
}

/** Points joined by a line or shown as dots: x and y are ranges such as A5:A9. */
export interface ScatterChart extends AnyChart {
  kind: "scatter";
  series: { name: string; x: string; y: string; look: "dots" | "line" }[];
}

/** Upright bars over names: side by side, or one upon the other. */
export interface BarChart extends AnyChart {
  kind: "bars";
  stacked?: boolean;
  names: string;
  series: { name: string; values: string }[];
}

export type Chart = ScatterChart | BarChart;

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
