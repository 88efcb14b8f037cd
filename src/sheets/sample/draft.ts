import type { BarChart, Book, ScatterChart } from "../../xlsx/write/book";

/** What a formula answered: one value, or a table's error such as #N/A. */
export type Answer = string | number | boolean | { error: string };

/** The answers of a recalculated workbook: a grid for each formula cell, one by one for a plain one. */
export type Answers = ReadonlyMap<string, readonly (readonly Answer[])[]>;

/** A workbook being drawn. The first drawing knows no answers; the second is drawn with those of the first. */
export interface Draft {
  book: Book;
  answers: Answers;
  /** The formulas that answer a table and spill from their cells. */
  spills: { sheet: string; address: string }[];
}

/** A chart, and the sheet it stands on; its values are on that sheet where no other is named. */
export type Placed<C> = Omit<C, "data"> & { sheet: string; data?: string };

/** Puts a chart on its sheet. */
export function addChart(
  { book }: Draft,
  { sheet, data = sheet, ...chart }: Placed<ScatterChart> | Placed<BarChart>,
): void {
  const standing = book.sheets.find(({ name }) => name === sheet);
  if (!standing) throw new Error(`A chart wants to stand on ${sheet}, which is not drawn yet`);
  standing.charts.push({ ...chart, data } as ScatterChart | BarChart);
}

/** The name under which a cell's answer is kept. */
export function placeOf(sheet: string, address: string): string {
  return `${sheet}!${address}`;
}
