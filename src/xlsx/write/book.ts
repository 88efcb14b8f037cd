import { addressOf, cellAt, type Block } from "../../formula/addresses";
import type { CellLook, Side } from "../styles";

/** A workbook to be written. */
export interface Book {
  title: string;
  author: string;
  /** The hour that the file says it was made; the same book at the same hour gives the same bytes. */
  at: Date;
  sheets: Sheet[];
  names: { name: string; refersTo: string }[];
}

export interface Sheet {
  name: string;
  /** By `row column`, counted from 0. */
  cells: Map<string, Cell>;
  /** By column, in characters. */
  widths: number[];
  /** By row, in points. */
  heights: Map<number, number>;
  merges: string[];
  frozen: { rows: number; columns: number };
  tables: Table[];
  rules: Rule[];
  charts: Chart[];
  print: Print;
  /** Lines between the cells, as on a sheet to type in; the sheets of a drawn workbook have none. */
  gridlines?: boolean;
  /** The tab's colour. */
  tab?: string;
}

export interface Cell {
  row: number;
  column: number;
  content: Content;
  style: CellStyle;
  choices?: Choices;
}

/** What a cell holds. A formula stands as the file stores it, without the equals sign, beside its answer. */
export type Content = null | string | number | boolean | Date | CellFault | FormulaContent | LinkContent;

export interface CellFault {
  error: string;
}

export interface FormulaContent {
  formula: string;
  result?: string | number | boolean | CellFault;
  /** The block that the answer fills: the formula is then a dynamic array, as Excel writes one. */
  fills?: Block;
}

/** Text that leads to another sheet, to its first cell or another. */
export interface LinkContent {
  text: string;
  leadsTo: string;
  cell?: string;
}

/** A cell's look, as far as it is not the usual one. */
export interface CellStyle {
  font?: Partial<NonNullable<CellLook["font"]>>;
  fill?: string;
  edges?: Partial<Record<Side, { style: string; color?: string }>>;
  across?: "left" | "center" | "right";
  upright?: "top" | "center" | "bottom";
  indent?: number;
  wrap?: boolean;
  numberFormat?: string;
}

/** A list to choose from; what is not in it is let through with a question. */
export interface Choices {
  /** The name or the cells that hold the list. */
  list: string;
  title: string;
  question: string;
}

export interface Table {
  name: string;
  block: Block;
  columns: { name: string; formula?: string; array?: boolean }[];
  filters: boolean;
}

/** A rule that paints cells where a formula of the spreadsheet's own holds. */
export interface Rule {
  cells: string;
  formula: string;
  style: CellStyle;
}

export interface Print {
  landscape: boolean;
  /** Printed on one page, however long; else as wide as one page. */
  onePage: boolean;
  footer: string;
  /** How large, in percent; where it is said the sheet is not fitted to pages. */
  scale?: number;
  /** Columns and rows that begin another page, counted from 0. */
  columnBreaks?: number[];
  rowBreaks?: number[];
  /** Rows and columns repeated on every page, counted from 0. */
  repeated?: { first: number; last: number };
  repeatedColumns?: { first: number; last: number };
  /** Prints only these cells. */
  area?: Block;
}

interface AnyChart {
  /** Where it stands, from one cell to another, counted from 0. */
  from: { column: number; row: number };
  to: { column: number; row: number };
  title: string;
  xTitle: string;
  yTitle: string;
  /** The sheet that holds its values. */
  data: string;
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

export function newSheet(name: string, print: Print): Sheet {
  return {
    ...{ name, cells: new Map(), widths: [], heights: new Map(), merges: [], frozen: { rows: 0, columns: 0 } },
    ...{ tables: [], rules: [], charts: [], print },
  };
}

/** The cell at an address or place, made if it is not there yet. */
export function cellIn(sheet: Sheet, at: string | { row: number; column: number }): Cell {
  const { row, column } = typeof at === "string" ? cellAt(at) : at;
  const key = `${row} ${column}`;
  let cell = sheet.cells.get(key);
  if (!cell) sheet.cells.set(key, (cell = { row, column, content: null, style: {} }));
  return cell;
}

export function addressOfCell({ row, column }: Cell): string {
  return addressOf(row, column);
}

export function isFormula(content: Content): content is FormulaContent {
  return typeof content === "object" && content !== null && "formula" in content;
}

/** What a cell shows: a formula's answer, a link's text. */
export function shownIn({ content }: Cell): Exclude<Content, FormulaContent | LinkContent> | undefined {
  if (isFormula(content)) return content.result;
  return typeof content === "object" && content !== null && "leadsTo" in content ? content.text : content;
}
