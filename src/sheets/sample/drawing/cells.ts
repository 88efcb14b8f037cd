import type { CellValue, DataValidation, Row } from "exceljs";
import { type Answer, placeOf } from "../draft";
import { ADD_IN } from "../../../catalog/about/add-in";
import { storedFormula } from "../../../formula/stored";
import { type Page, put } from "./page";
import { type CellStyle, COMPUTED, ENTRY, KEY } from "./style";

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
  const formula = storedFormula(ADD_IN, typed, options.table);
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
      if (typeof answer === "string" && !(row === 0 && headerStyle)) {
        setIn(page, cell.address);
        const lines = Math.ceil(answer.length / sheet.getColumn(Number(cell.col)).width!);
        cell.style = { ...cell.style, alignment: { ...cell.style.alignment, wrapText: lines > 1 } };
        if (lines > 1) makeRoom(sheet.getRow(Number(cell.row)), lines);
      }
      if (row > 0 || column > 0) cell.value = answer === undefined || answer === "" ? null : (answer as CellValue);
    }
  corner.value = arrayOver(formulaValue(storedFormula(ADD_IN, typed), grid[0]?.[0]), `${address}:${end}`);
  draft.spills.push({ sheet: sheet.name, address });
}

/** A row with room for so many lines, and no less than it has. */
function makeRoom(row: Row, lines: number): void {
  row.height = Math.max(row.height ?? 0, 15.5 * lines);
}

/** Up to four decimals where nothing else is asked for. */
function usualFormat(answer: Answer | undefined): string | undefined {
  return typeof answer === "number" && !Number.isInteger(answer) ? "0.0###" : undefined;
}

function finish(page: Page, address: string, { name, list }: CellOptions): void {
  const cell = page.sheet.getCell(address);
  if (name) page.draft.book.definedNames.add(`'${page.sheet.name}'!${absolute(address)}`, name);
  if (list) cell.dataValidation = chooseFrom(list);
}

/** Lets other spellings through with a question, for the functions read more spellings than the list shows. */
export function chooseFrom(list: string): DataValidation {
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
