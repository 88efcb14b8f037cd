import { blockOf, columnLetters } from "../../../formula/addresses";
import { cellIn, newSheet, type Content, type Sheet } from "../../../xlsx/write/book";
import type { Draft } from "../draft";
import { scaleFor } from "../../paper";
import { CAUTION, type CellStyle, HEADING, LEAD, LINK, OVER, PROSE, TITLE } from "./style";

/** One sheet of the workbook, and the draft it belongs to. */
export interface Page {
  draft: Draft;
  sheet: Sheet;
  /** The last column that headings run to. */
  lastColumn: string;
  /** How far prose runs, so that it is read without scrolling sideways. */
  prose: { lastColumn: string; characters: number };
}

export interface PageSetup {
  title: string;
  lead: string;
  widths: number[];
  /** Height of the lead in lines. */
  leadLines?: number;
  landscape?: boolean;
  /** Printed on one page: it must be short enough for that. */
  onePage?: boolean;
  /** A form that a person would use again with data of his own. */
  form?: boolean;
  /** Columns, counted from 0, that begin another page; and whether the first column is printed again there. */
  pages?: { startAt: readonly number[]; namesRows?: boolean };
}

/** A new sheet with its title, what it is for, and our print set-up. */
export function startPage(draft: Draft, name: string, setup: PageSetup): Page {
  const page = blankPage(draft, name, setup.widths, setup.landscape === false);
  page.sheet.print.onePage = setup.onePage ?? false;
  if (setup.form) asForm(page);
  if (setup.pages) {
    pagesAcross(page.sheet, setup.pages.startAt, setup.pages.namesRows);
    page.prose = proseSpan(setup.widths.slice(0, setup.pages.startAt[0]));
  }
  put(page, "A1", setup.title, TITLE);
  setHeight(page, 1, 28);
  prose(page, 2, setup.lead, LEAD, setup.leadLines ?? 2);
  return page;
}

/** The foot of a page names the yard; where the sheet is data and not a form it says whose. */
const FOOT = "&C&10&A&R&10Page &P of &N";
const YARD = "&L&10The sample yard, Nora and Emil";

/** A sheet that a person would use again with data of his own names the yard, and says of no data that it is invented. */
export function asForm({ sheet }: Page): void {
  sheet.print.footer = YARD + FOOT;
}

/** A new sheet with its columns and our print set-up, and nothing on it. */
export function blankPage(draft: Draft, name: string, widths: readonly number[], upright: boolean): Page {
  const sheet = newSheet(name, { landscape: !upright, onePage: false, footer: `${YARD}: all data invented${FOOT}` });
  sheet.widths = [...widths];
  draft.book.sheets.push(sheet);
  return { draft, sheet, lastColumn: columnLetters(widths.length - 1), prose: proseSpan(widths) };
}

/** About as many characters as a small screen shows beside each other. */
const MOST_CHARACTERS = 132;

/** Begins another page at each of some columns, counted from 0, and prints the first again on it if that names the rows. */
export function pagesAcross({ print, widths }: Sheet, starts: readonly number[], namesRows = true): void {
  if (starts.length === 0) return;
  print.scale = scaleFor(widths, starts, { landscape: print.landscape, repeats: namesRows });
  print.columnBreaks = [...starts];
  if (namesRows) print.repeatedColumns = { first: 0, last: 0 };
}

function proseSpan(widths: readonly number[]): Page["prose"] {
  let [columns, characters] = [0, 0];
  while (columns < widths.length && characters + widths[columns]! <= MOST_CHARACTERS) characters += widths[columns++]!;
  return { lastColumn: columnLetters(columns - 1), characters };
}

/** Keeps rows and columns in sight, and repeats the rows on every printed page. */
export function freeze(page: Page, rows: number, columns: number): void {
  page.sheet.frozen = { rows, columns };
}

export function repeatRows(page: Page, first: number, last: number): void {
  page.sheet.print.repeated = { first: first - 1, last: last - 1 };
}

/** Prints only a block of the sheet: what stands outside is for the screen. */
export function printOnly(page: Page, block: string): void {
  page.sheet.print.area = blockOf(block);
}

export function put(page: Page, address: string, value: Content, style: CellStyle): void {
  const cell = cellIn(page.sheet, address);
  cell.content = value === "" ? null : value;
  cell.style = { ...style };
}

/** Wrapped text across the sheet, in as many lines as it needs or more. */
export function prose(page: Page, row: number, text: string, style: CellStyle = PROSE, lines = 1): void {
  merge(page, `A${row}:${page.prose.lastColumn}${row}`);
  put(page, `A${row}`, text, style);
  setHeight(page, row, 15.5 * Math.max(lines, Math.ceil(text.length / page.prose.characters)));
}

export function caution(page: Page, row: number, text: string, lines = 1): void {
  prose(page, row, `Caution: ${text}`, CAUTION, lines);
}

/** A heading with a line under it, across the sheet or from one column to another. */
export function heading(page: Page, row: number, text: string, lastColumn = page.lastColumn, firstColumn = "A"): void {
  const { left, right } = blockOf(`${firstColumn}1:${lastColumn}1`);
  for (let column = left; column <= right; column++)
    cellIn(page.sheet, { row: row - 1, column }).style = { ...HEADING };
  put(page, `${firstColumn}${row}`, text, HEADING);
  setHeight(page, row, 20);
}

/** Colours the cells of a column that say OVER. The rule is Excel's own: a function of ours must not stand in one. */
export function markOver(page: Page, column: string, first: number, last: number): void {
  page.sheet.rules.push({
    cells: `${column}${first}:${column}${last}`,
    formula: `ISNUMBER(SEARCH("OVER",${column}${first}))`,
    style: OVER,
  });
}

export function link(page: Page, address: string, sheetName: string): void {
  put(page, address, { text: sheetName, leadsTo: sheetName }, LINK);
}

/** Makes one cell of a block. */
export function merge(page: Page, block: string): void {
  page.sheet.merges.push(block);
}

/** The height of a row, in points. */
export function setHeight(page: Page, row: number, points: number): void {
  page.sheet.heights.set(row - 1, points);
}

/** The width of a column, in characters. */
export function setWidth(page: Page, column: string, characters: number): void {
  page.sheet.widths[blockOf(`${column}1`).left] = characters;
}

/** How a cell looks, whatever it holds. */
export function setLook(page: Page, address: string, style: CellStyle): void {
  cellIn(page.sheet, address).style = { ...style };
}
