import { addressOf, blockOf, fixedRangeOf, cellAt as placeIn, type Block } from "../../../formula/addresses";
import { cellIn, type Choices, type Content, type FormulaContent } from "../../../xlsx/write/book";
import { type Answer, placeOf } from "../draft";
import { ADD_IN } from "../../../catalog/about/add-in";
import { functionsOf } from "../../../formula/functions";
import { storedFormula } from "../../../formula/stored";
import type { Look } from "../../looks";
import { isListOfOurs, LIST_NAMES } from "../../lists";
import { type Page, put } from "./page";
import { type CellStyle, COMPUTED, ENTRY, KEY, styleOf } from "./style";

export interface CellOptions {
  format?: string;
  /** A defined name for the cell. */
  name?: string;
  /** The defined name of the list to choose from. */
  list?: string;
  /** Stands out: a key result. */
  key?: boolean;
  /** How it looks where that is neither a key result nor a plain figure. */
  look?: Look;
  /** Takes one value out of an answer that would spill: kept as a dynamic array, so that Excel works on the whole of it. */
  array?: boolean;
}

/** A cell for the sawyer to type into. */
export function entry(page: Page, address: string, value: Content, options: CellOptions = {}): void {
  put(page, address, value, { ...ENTRY, ...(options.format && { numberFormat: options.format }) });
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
  // As Excel itself writes a call of an add-in's function: as a dynamic array, also where it fills one cell.
  const fills = options.array || functionsOf(ADD_IN, typed).length > 0 ? { fills: blockOf(address) } : {};
  put(
    page,
    address,
    { ...value, ...fills },
    {
      ...lookOf(options),
      ...(options.format && { numberFormat: options.format }),
    },
  );
  if (typeof answer === "string") {
    if (options.look === "wrapped") setText(page, placeIn(address), answer);
    else setIn(page, address);
  }
  if (options.look === "large") makeRoom(page, placeIn(address).row, LINES_OF_LARGE_TYPE);
  finish(page, address, options);
}

/** Large type is 18 points high, others are 11. */
const LINES_OF_LARGE_TYPE = 1.6;

function lookOf({ key, look }: CellOptions): CellStyle {
  if (look === "large" || look === "wrapped") return styleOf(look);
  return key ? KEY : COMPUTED;
}

/** Keeps text off the number to its left. */
export function setIn(page: Page, address: string): void {
  const cell = cellIn(page.sheet, address);
  cell.style = { ...cell.style, across: "left", indent: 1 };
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
  const { row: top, column: left } = placeIn(address);
  const height = Math.max(1, grid.length);
  const width = Math.max(1, grid[0]?.length ?? 1);
  for (let down = 0; down < height; down++)
    for (let right = 0; right < width; right++) {
      const place = { row: top + down, column: left + right };
      const answer = grid[down]?.[right];
      const asHeading = down === 0 ? headerStyle : undefined;
      const format = formats[Math.min(right, formats.length - 1)] || usualFormat(answer);
      const cell = cellIn(sheet, place);
      cell.style = asHeading ? { ...asHeading } : { ...COMPUTED, ...(format && { numberFormat: format }) };
      if (typeof answer === "string") {
        if (asHeading) makeRoom(page, place.row, linesOf(page, place, BOLD_IS_WIDER * answer.length));
        else setText(page, place, answer);
      }
      if (down > 0 || right > 0) cell.content = answer === undefined || answer === "" ? null : answer;
    }
  const fills = { top, left, bottom: top + height - 1, right: left + width - 1 };
  cellIn(sheet, address).content = { ...formulaValue(storedFormula(ADD_IN, typed), grid[0]?.[0]), fills };
  draft.spills.push({ sheet: sheet.name, address });
}

/** Text of a spilled answer: set in, and in as many lines as its column is too narrow for. */
function setText(page: Page, place: { row: number; column: number }, text: string): void {
  setIn(page, addressOf(place.row, place.column));
  const lines = linesOf(page, place, text.length);
  const cell = cellIn(page.sheet, place);
  cell.style = { ...cell.style, wrap: lines > 1 };
  if (lines > 1) makeRoom(page, place.row, lines);
}

/** In how many lines so many characters stand in a column. */
function linesOf({ sheet }: Page, { column }: { column: number }, characters: number): number {
  return Math.ceil(characters / sheet.widths[column]!);
}

const BOLD_IS_WIDER = 1.15;

/** A row with room for so many lines, and no less than it has. */
function makeRoom({ sheet }: Page, row: number, lines: number): void {
  sheet.heights.set(row, Math.max(sheet.heights.get(row) ?? 0, 15.5 * lines));
}

/** Up to four decimals where nothing else is asked for. */
function usualFormat(answer: Answer | undefined): string | undefined {
  return typeof answer === "number" && !Number.isInteger(answer) ? "0.0###" : undefined;
}

function finish(page: Page, address: string, { name, list }: CellOptions): void {
  if (name) nameCells(page, name, blockOf(address));
  if (list) cellIn(page.sheet, address).choices = chooseFrom(list);
}

/** Gives cells of the page a name that formulas may use. */
export function nameCells({ draft, sheet }: Page, name: string, block: Block): void {
  draft.book.names.push({ name, refersTo: `'${sheet.name}'!${fixedRangeOf(block)}` });
}

/** Lets other spellings through with a question, for the functions read more spellings than the list shows. */
export function chooseFrom(list: string): Choices {
  return {
    list: isListOfOurs(list) ? LIST_NAMES[list] : list,
    title: "Not in the list",
    question: "The list holds the names this workbook knows. Keep what you typed?",
  };
}

function formulaValue(formula: string, answer: Answer | undefined): FormulaContent {
  return { formula, ...(answer === undefined ? {} : { result: answer }) };
}
