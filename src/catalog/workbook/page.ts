import type { CellValue, Worksheet } from "exceljs";
import { type Answer, type Draft, placeOf } from "./draft";
import { storedFormula } from "./formula";
import { CAUTION, type CellStyle, COMPUTED, ENTRY, HEADING, KEY, LEAD, LINK, OVER, PROSE, TITLE } from "./style";

/** One sheet of the workbook, and the draft it belongs to. */
export interface Page {
  draft: Draft;
  sheet: Worksheet;
  /** The last column that print and prose run to. */
  lastColumn: string;
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
  const page = { draft, sheet, lastColumn: sheet.getColumn(setup.widths.length).letter };
  put(page, "A1", setup.title, TITLE);
  sheet.getRow(1).height = 28;
  prose(page, 2, setup.lead, LEAD, setup.leadLines ?? 2);
  return page;
}

/** Keeps rows and columns in sight, and repeats the rows on every printed page. */
export function freeze(page: Page, rows: number, columns: number): void {
  page.sheet.views = [{ state: "frozen", xSplit: columns, ySplit: rows, showGridLines: false }];
}

export function repeatRows(page: Page, first: number, last: number): void {
  page.sheet.pageSetup.printTitlesRow = `${first}:${last}`;
}

export function put(page: Page, address: string, value: CellValue, style: CellStyle): void {
  const cell = page.sheet.getCell(address);
  cell.value = value === "" ? null : value;
  cell.style = { ...style };
}

/** Wrapped text across the sheet. */
export function prose(page: Page, row: number, text: string, style: CellStyle = PROSE, lines = 1): void {
  page.sheet.mergeCells(`A${row}:${page.lastColumn}${row}`);
  put(page, `A${row}`, text, style);
  page.sheet.getRow(row).height = 15.5 * lines;
}

export function caution(page: Page, row: number, text: string, lines = 1): void {
  prose(page, row, `Caution: ${text}`, CAUTION, lines);
}

export function heading(page: Page, row: number, text: string, lastColumn = page.lastColumn): void {
  const last = page.sheet.getColumn(lastColumn).number;
  for (let column = 1; column <= last; column++) page.sheet.getCell(row, column).style = { ...HEADING };
  put(page, `A${row}`, text, HEADING);
  page.sheet.getRow(row).height = 20;
}

export interface CellOptions {
  format?: string;
  /** A defined name for the cell. */
  name?: string;
  /** The defined name of the list to choose from. */
  list?: string;
  /** Stands out: a key result. */
  key?: boolean;
  /** Takes one value out of an answer that would spill: kept as a dynamic array, so that Excel works on the whole of it. */
  array?: boolean;
}

/** A cell for the sawyer to type into. */
export function entry(page: Page, address: string, value: CellValue, options: CellOptions = {}): void {
  put(page, address, value, { ...ENTRY, ...(options.format && { numFmt: options.format }) });
  if (typeof value === "string") setIn(page, address);
  finish(page, address, options);
}

/** A cell that a formula fills. */
export function figure(
  page: Page,
  address: string,
  typed: string,
  options: CellOptions & { table?: string } = {},
): void {
  const formula = storedFormula(typed, options.table);
  const answer = page.draft.answers.get(placeOf(page.sheet.name, address))?.[0]?.[0];
  const value = formulaValue(formula, answer);
  put(page, address, options.array ? arrayOver(value, address) : value, {
    ...(options.key ? KEY : COMPUTED),
    ...(options.format && { numFmt: options.format }),
  });
  if (typeof answer === "string") setIn(page, address);
  finish(page, address, options);
}

/** Keeps text off the number to its left. */
export function setIn(page: Page, address: string): void {
  const cell = page.sheet.getCell(address);
  cell.style = { ...cell.style, alignment: { ...cell.style.alignment, horizontal: "left", indent: 1 } };
}

/** A formula that answers a table: the file holds the answer in the cells it spills into. */
export function spill(
  page: Page,
  address: string,
  typed: string,
  formats: readonly string[],
  headerStyle?: CellStyle,
): void {
  const { draft, sheet } = page;
  const grid = draft.answers.get(placeOf(sheet.name, address)) ?? [];
  const corner = sheet.getCell(address);
  const height = Math.max(1, grid.length);
  const width = Math.max(1, grid[0]?.length ?? 1);
  const end = sheet.getCell(Number(corner.row) + height - 1, Number(corner.col) + width - 1).address;
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) {
      const cell = sheet.getCell(Number(corner.row) + row, Number(corner.col) + column);
      const answer = grid[row]?.[column];
      const format = formats[Math.min(column, formats.length - 1)] || usualFormat(answer);
      cell.style = row === 0 && headerStyle ? { ...headerStyle } : { ...COMPUTED, ...(format && { numFmt: format }) };
      if (typeof answer === "string" && !(row === 0 && headerStyle)) setIn(page, cell.address);
      if (row > 0 || column > 0) cell.value = answer === undefined || answer === "" ? null : (answer as CellValue);
    }
  corner.value = arrayOver(formulaValue(storedFormula(typed), grid[0]?.[0]), `${address}:${end}`);
  draft.spills.push({ sheet: sheet.name, address });
}

/** Colours the cells of a column that say OVER. The rule is Excel's own: a function of ours must not stand in one. */
export function markOver(page: Page, column: string, first: number, last: number): void {
  page.sheet.addConditionalFormatting({
    ref: `${column}${first}:${column}${last}`,
    rules: [{ type: "expression", formulae: [`ISNUMBER(SEARCH("OVER",${column}${first}))`], style: OVER, priority: 1 }],
  });
}

/** Up to four decimals where nothing else is asked for. */
function usualFormat(answer: Answer | undefined): string | undefined {
  return typeof answer === "number" && !Number.isInteger(answer) ? "0.0###" : undefined;
}

export function link(page: Page, address: string, sheetName: string): void {
  put(page, address, { text: sheetName, hyperlink: `#'${sheetName}'!A1` }, LINK);
}

function finish(page: Page, address: string, { name, list }: CellOptions): void {
  const cell = page.sheet.getCell(address);
  if (name) page.draft.book.definedNames.add(`'${page.sheet.name}'!${absolute(address)}`, name);
  if (list) cell.dataValidation = chooseFrom(list);
}

/** Lets other spellings through with a question, for the functions read more spellings than the list shows. */
export function chooseFrom(list: string): import("exceljs").DataValidation {
  return {
    type: "list",
    allowBlank: true,
    formulae: [list],
    showErrorMessage: true,
    errorStyle: "warning",
    errorTitle: "Not in the list",
    error: "The list holds the names this workbook knows. Keep what you typed?",
  };
}

function absolute(address: string): string {
  return address.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}

/** The library's types leave array formulas out; it writes them. */
function arrayOver(value: CellValue, ref: string): CellValue {
  return { ...(value as object), shareType: "array", ref } as unknown as CellValue;
}

function formulaValue(formula: string, answer: Answer | undefined): CellValue {
  return { formula, result: answer } as CellValue;
}
