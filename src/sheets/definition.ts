/**
 * A sheet with a table, as data: live formulas in its columns, and above them what holds for all rows. The pane adds it
 * to a person's own workbook with a few rows to type over; the sample has the same sheet with the rows of its yard.
 *
 * Formulas are written as in Excel. `[@Length]` and `[@[Small end]]` are cells of the same row, `Table[Net]` a whole
 * column (`Table[[A]:[B]]` several), `{Kerf}` the value of a setting or figure of this sheet, `{name of taper}` the cell with its name.
 * `{beside}:{beside end}` is the answer beside the table, `{beside}:{beside foot}` its first column.
 */
export interface TableSheet {
  /** Heading and, numbered when it is taken, name of the sheet. */
  title: string;
  /** What stands on top of it, where that says more than its name. */
  heading?: string;
  /** Name of the table, numbered when it is taken. */
  table: string;
  /** What it is for, in a sentence; the pane shows it too. */
  lead: string;
  cautions: readonly string[];
  settings: readonly Setting[];
  figures: readonly Figure[];
  /** The column that holds the values of settings and figures, from 1; labels begin in the first. The second if left out. */
  valueColumn?: number;
  /** The columns, from 1, in which figures stand beside the settings; else they stand under them. */
  figuresFrom?: { label: number; value: number };
  columns: readonly Column[];
  /** Columns that stay in sight while the others move. */
  frozenColumns?: number;
  /** Rows by the columns' headings: invented. */
  examples: readonly Row[];
  blankRows: number;
  /** A formula whose answer fills the cells to the right of the table. */
  beside?: Beside;
  print?: SheetPrint;
}

export type Row = Readonly<Record<string, string | number | Date | null>>;

/** Text keeps 5/4 and 8-6 as they were typed. */
export type EntryKind = "text" | "number";

/** Names to choose from; others may still be typed, for the functions know more spellings. */
export type ListName = "species" | "rules" | "roundings" | "patterns" | "thicknesses" | "states";

/** A value that holds for the whole sheet. */
export interface Setting {
  label: string;
  kind: EntryKind;
  value: string | number;
  format?: string;
  note: string;
  /** A list of ours, or the defined name of a list of the workbook's own. */
  list?: string;
  /** The name by which other sheets of a workbook know the cell. */
  name?: string;
}

/** A computed value for the whole sheet. */
export interface Figure {
  label: string;
  formula: string;
  format?: string;
  note: string;
  /** What may go wrong when the figure is trusted blindly; stands beside it. */
  caution?: string;
  name?: string;
}

/** A column of a table: worked out by its formula, or typed into. */
export interface Column {
  heading: string;
  formula?: string;
  /** What is typed into it. */
  kind?: EntryKind;
  format?: string;
  /** In characters. */
  width?: number;
  /** Stands above the heading: the unit, or what is meant. */
  note?: string;
  caution?: string;
  /** Of what is worked out: to be read at arm's length, or a text of several lines. */
  look?: "large" | "wrapped";
  /** A verdict: what begins with OVER stands out in red. */
  marksOver?: boolean;
  /** A list of ours, or the defined name of a list of the workbook's own. */
  list?: string;
}

export interface Beside {
  heading: string;
  formula: string;
  /** As many rows get the columns' formats; an answer may be longer. */
  rows: number;
  columns: readonly { width: number; format?: string }[];
}

/** How a sheet goes onto paper: never so small that it cannot be read, so a wide one takes several pages side by side. */
export interface SheetPrint {
  upright?: boolean;
  /** Leaves out the answer beside the table: it is for the screen. */
  withoutBeside?: boolean;
  /** Headings of the columns that begin another page across; the first column is printed again on each. */
  newPageAt?: readonly string[];
}
