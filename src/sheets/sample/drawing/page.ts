import type { CellValue, Worksheet } from "exceljs";
import type { Draft } from "../draft";
import { CAUTION, type CellStyle, HEADING, LEAD, LINK, OVER, PROSE, TITLE } from "./style";

/** One sheet of the workbook, and the draft it belongs to. */
export interface Page {
  draft: Draft;
  sheet: Worksheet;
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
  /** Printed on one page, however long. */
  onePage?: boolean;
}

/** A new sheet with its title, what it is for, and our print set-up. */
export function startPage(draft: Draft, name: string, setup: PageSetup): Page {
  const sheet = draft.book.addWorksheet(name, {
    views: [{ showGridLines: false }],
    pageSetup: {
      paperSize: 1 as never, // US letter, which the library's list of papers leaves out
      orientation: setup.landscape === false ? "portrait" : "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: setup.onePage ? 1 : 0,
      margins: { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 },
    },
    headerFooter: { oddFooter: "&LBole sample workbook, all data invented&C&A&RPage &P of &N" },
  });
  sheet.columns = setup.widths.map((width) => ({ width }));
  const page = {
    draft,
    sheet,
    lastColumn: sheet.getColumn(setup.widths.length).letter,
    prose: proseSpan(sheet, setup.widths),
  };
  put(page, "A1", setup.title, TITLE);
  sheet.getRow(1).height = 28;
  prose(page, 2, setup.lead, LEAD, setup.leadLines ?? 2);
  return page;
}

/** About as many characters as a small screen shows beside each other. */
const MOST_CHARACTERS = 132;

function proseSpan(sheet: Worksheet, widths: readonly number[]): Page["prose"] {
  let [columns, characters] = [0, 0];
  while (columns < widths.length && characters + widths[columns]! <= MOST_CHARACTERS) characters += widths[columns++]!;
  return { lastColumn: sheet.getColumn(columns).letter, characters };
}

/** Keeps rows and columns in sight, and repeats the rows on every printed page. */
export function freeze(page: Page, rows: number, columns: number): void {
  page.sheet.views = [{ state: "frozen", xSplit: columns, ySplit: rows, showGridLines: false }];
}

export function repeatRows(page: Page, first: number, last: number): void {
  page.sheet.pageSetup.printTitlesRow = `${first}:${last}`;
}

/** Prints only a block of the sheet: what stands outside is for the screen. */
export function printOnly(page: Page, block: string): void {
  // The library fixes the columns but not the rows: A1:B9 would become $A1:$B9.
  page.sheet.pageSetup.printArea = block.replace(/([A-Z]+)(\d+)/g, "$1$$$2");
}

export function put(page: Page, address: string, value: CellValue, style: CellStyle): void {
  const cell = page.sheet.getCell(address);
  cell.value = value === "" ? null : value;
  cell.style = { ...style };
}

/** Wrapped text across the sheet, in as many lines as it needs or more. */
export function prose(page: Page, row: number, text: string, style: CellStyle = PROSE, lines = 1): void {
  page.sheet.mergeCells(`A${row}:${page.prose.lastColumn}${row}`);
  put(page, `A${row}`, text, style);
  page.sheet.getRow(row).height = 15.5 * Math.max(lines, Math.ceil(text.length / page.prose.characters));
}

export function caution(page: Page, row: number, text: string, lines = 1): void {
  prose(page, row, `Caution: ${text}`, CAUTION, lines);
}

/** A heading with a line under it, across the sheet or from one column to another. */
export function heading(page: Page, row: number, text: string, lastColumn = page.lastColumn, firstColumn = "A"): void {
  const [first, last] = [firstColumn, lastColumn].map((letter) => page.sheet.getColumn(letter).number) as [
    number,
    number,
  ];
  for (let column = first; column <= last; column++) page.sheet.getCell(row, column).style = { ...HEADING };
  put(page, `${firstColumn}${row}`, text, HEADING);
  page.sheet.getRow(row).height = 20;
}

/** Colours the cells of a column that say OVER. The rule is Excel's own: a function of ours must not stand in one. */
export function markOver(page: Page, column: string, first: number, last: number): void {
  page.sheet.addConditionalFormatting({
    ref: `${column}${first}:${column}${last}`,
    rules: [{ type: "expression", formulae: [`ISNUMBER(SEARCH("OVER",${column}${first}))`], style: OVER, priority: 1 }],
  });
}

export function link(page: Page, address: string, sheetName: string): void {
  put(page, address, { text: sheetName, hyperlink: `#'${sheetName}'!A1` }, LINK);
}
