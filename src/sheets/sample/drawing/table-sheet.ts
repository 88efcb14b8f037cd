import { blockOf, columnLetters } from "../../../formula/addresses";
import { cellIn, type Sheet } from "../../../xlsx/write/book";
import type { TableSheet } from "../../definition";
import { laidOut, type LaidOut, type Placed } from "../../laid-out";
import type { Draft } from "../draft";
import { chooseFrom, entry, figure, nameCells, spill } from "./cells";
import {
  blankPage,
  freeze,
  markOver,
  pagesAcross,
  merge,
  type Page,
  put,
  repeatRows,
  setHeight,
  setLook,
} from "./page";
import { HEADER, styleOf } from "./style";
import { describeColumn, filling } from "./table";

/** Points of a line of text, of the title's row and of the headings' two lines. */
const LINE = 15.5;
const TITLE_HEIGHT = 24;
const HEADINGS_HEIGHT = 33;
/** A rule goes on below the table, for the rows to come. */
const ROWS_TO_COME = 200;
/** From as many rows on a table has buttons to filter it. */
const ROWS_TO_FILTER = 12;

/** Where the table of a sheet ended up. */
export interface Standing {
  page: Page;
  table: LaidOut["table"];
}

/** Labels whose values stand on another sheet, by the name of their cell. */
type Named = Readonly<Record<string, string>>;

/** Puts a sheet's definition down as a sheet of the sample. */
export function drawTableSheet(draft: Draft, definition: TableSheet, elsewhere: Named = {}): Standing {
  const { title: name, table: tableName, print } = definition;
  const drawn = laidOut(byName(definition, elsewhere), { sheet: name, table: tableName }, "table");
  const { table, across, choices, named } = drawn;
  const page = blankPage(draft, name, drawn.widths, print?.upright ?? false);
  page.sheet.tables.push(tableOf(drawn));
  setHeight(page, table.headerRow, HEADINGS_HEIGHT);
  const besideFormats = definition.beside?.columns.map(({ format = "" }) => format) ?? [];
  for (const cell of drawn.cells) drawCell(page, cell, table.name, besideFormats);
  for (const { row, columns, lines } of across) {
    merge(page, `A${row}:${columnLetters(columns - 1)}${row}`);
    setHeight(page, row, LINE * lines);
  }
  for (const [at, { note, caution, formula }] of table.columns.entries())
    if (formula && !note && !caution) describeColumn(page, `${columnLetters(at)}${table.headerRow - 1}`, formula);
  setHeight(page, 1, TITLE_HEIGHT);
  setHeight(page, table.headerRow - 1, LINE * linesOfNotes(drawn));
  for (const { address, list } of choices) offer(page.sheet, address, list);
  for (const { address, name: known } of named) nameCells(page, known, blockOf(address));
  for (const [at, { marksOver }] of table.columns.entries())
    if (marksOver) markOver(page, columnLetters(at), table.headerRow + 1, table.lastRow + ROWS_TO_COME);
  freeze(page, drawn.frozenRows, drawn.frozenColumns);
  repeatRows(page, table.headerRow, table.headerRow);
  pagesAcross(page.sheet, drawn.paper.pageStarts, drawn.paper.tableAlone);
  const { tableAlone, lastColumn } = drawn.paper;
  if (tableAlone || lastColumn < drawn.widths.length - 1)
    page.sheet.print.area = { ...tableOf(drawn).block, top: tableAlone ? table.headerRow - 1 : 0 };
  return { page, table };
}

/** In the sample a cell that has a name goes by it. */
function byName(definition: TableSheet, elsewhere: Named): TableSheet {
  const own = [...definition.settings, ...definition.figures].flatMap(({ label, name }) =>
    name ? [[label, name]] : [],
  );
  const names = [...own, ...Object.entries(elsewhere)].map(([label, name]) => [`{${label}}`, name] as [string, string]);
  const spoken = <Part extends { formula?: string }>(part: Part): Part =>
    part.formula === undefined
      ? part
      : { ...part, formula: names.reduce((text, [label, name]) => text.replaceAll(label, name), part.formula) };
  return {
    ...definition,
    blankRows: 0,
    figures: definition.figures.map(spoken),
    columns: definition.columns.map(spoken),
  };
}

/** The table, new rows of which are filled as its first row is: its formulas point at settings by their cells there. */
function tableOf({ cells, table: { name, headerRow, lastRow, columns } }: LaidOut): Sheet["tables"][number] {
  const first = new Map(cells.flatMap((cell) => (cell.row === headerRow + 1 ? [[cell.column, cell]] : [])));
  const formulaOf = (at: number) => (first.get(at + 1)?.isFormula ? String(first.get(at + 1)!.content) : undefined);
  return {
    name,
    block: { top: headerRow - 1, left: 0, bottom: lastRow - 1, right: columns.length - 1 },
    columns: columns.map(({ heading }, at) => {
      const formula = formulaOf(at);
      return { name: heading, ...(formula && filling(formula, name)) };
    }),
    filters: lastRow - headerRow > ROWS_TO_FILTER,
  };
}

function drawCell(
  page: Page,
  { row, column, content, isFormula, look, format }: Placed,
  table: string,
  besideFormats: readonly string[],
): void {
  const address = `${columnLetters(column - 1)}${row}`;
  if (look === "spilled") {
    // The answer itself fills the cells that the definition gives formats to.
    if (isFormula) spill(page, address, String(content), besideFormats, HEADER);
  } else if (isFormula) figure(page, address, String(content), { format, table, key: look === "figure", look });
  else if (look === "entry") entry(page, address, content === "" ? null : content, { format });
  else put(page, address, content, look === "header" ? HEADER : styleOf(look));
  if (look === "status") setLook(page, address, styleOf(look));
}

/** The notes above the headings stand in as many lines as the longest needs. */
function linesOfNotes({ cells, table, widths }: LaidOut): number {
  const notes = cells.filter(({ row, column }) => row === table.headerRow - 1 && column <= table.columns.length);
  return Math.max(1, ...notes.map(({ content, column }) => Math.ceil(String(content).length / widths[column - 1]!)));
}

function offer(sheet: Sheet, range: string, list: string): void {
  const { top, bottom, left } = blockOf(range);
  for (let row = top; row <= bottom; row++) cellIn(sheet, { row, column: left }).choices = chooseFrom(list);
}
