/**
 * A sheet that a person adds to his own workbook: a table with live formulas, and above it what holds for all its rows.
 *
 * Formulas are written as in Excel. `[@Length]` and `[@[Small end]]` are cells of the same row, `Table[Net]` a whole
 * column (`Table[[A]:[B]]` several), `{Kerf}` the value of a setting or figure of this sheet, `{name of taper}` the cell with its name.
 */
export interface ReadySheet {
  /** Heading and, numbered when it is taken, name of the sheet. */
  title: string;
  /** Name of the table, numbered when it is taken. */
  table: string;
  /** What it is for, in a sentence; the pane shows it too. */
  lead: string;
  cautions: readonly string[];
  settings: readonly Setting[];
  figures: readonly Figure[];
  columns: readonly Column[];
  /** Invented rows, by the columns' headings. */
  examples: readonly Row[];
  blankRows: number;
  /** A formula whose answer fills the cells to the right of the table. */
  beside?: Beside;
}

export type Row = Readonly<Record<string, string | number>>;

/** Text keeps 5/4 and 8-6 as they were typed. */
export type EntryKind = "text" | "number";

/** Names to choose from; others may still be typed, for the functions know more spellings. */
export type ListName = "species" | "rules" | "patterns" | "thicknesses";

/** A value that holds for the whole sheet. */
export interface Setting {
  label: string;
  kind: EntryKind;
  value: string | number;
  note: string;
  list?: ListName;
}

/** A computed value for the whole sheet. */
export interface Figure {
  label: string;
  formula: string;
  format?: string;
  note: string;
  /** What may go wrong when the figure is trusted blindly; stands beside it. */
  caution?: string;
}

export interface Column {
  heading: string;
  kind: EntryKind | "computed";
  formula?: string;
  format?: string;
  /** In characters. */
  width: number;
  /** Stands above the heading: the unit, or what is meant. */
  note: string;
  caution?: string;
  list?: ListName;
}

export interface Beside {
  heading: string;
  formula: string;
  /** As many rows get the columns' formats; an answer may be longer. */
  rows: number;
  columns: readonly { width: number; format?: string }[];
}

/** Shows nothing for the 0 of a row that nobody has filled in. */
export const FORMAT = {
  whole: '#,##0;-#,##0;" "',
  one: '#,##0.0;-#,##0.0;" "',
  three: '0.000;-0.000;" "',
  money: '#,##0.00;-#,##0.00;" "',
} as const;

/** Where 0 says something. */
export const ALWAYS = { whole: "#,##0", one: "#,##0.0", money: "#,##0.00" } as const;
