import { blocksOf, type Block } from "../../../sheets/ready/blocks";
import { columnLetters } from "../../../formula/addresses";
import { freeSheetName, freeTableName } from "../../../sheets/ready/free-name";
import { laidOut, type LaidOut } from "../../../sheets/laid-out";
import { LOOKS, type Appearance } from "../../../sheets/looks";
import type { TableSheet } from "../../../sheets/definition";
import { addChoices } from "./choices";
import { setPages } from "./pages";
import { inWorkbook, mustSupport } from "./in-workbook";

/** Points of a line of text, and of a character of a column's width (Excel's usual font). */
const LINE_HEIGHT = 15;
const CHARACTER_WIDTH = 5.4;
const TITLE_HEIGHT = 24;
const NOTE_LINES = 3;

/** Adds a ready sheet to the workbook, under a name that is free, and shows it. */
export function addReadySheet(definition: TableSheet): Promise<string> {
  return inWorkbook(async (context) => {
    mustSupport("1.9", "ready sheets");
    const drawn = laidOut(definition, await freeNames(definition, context), "table");
    const sheet = context.workbook.worksheets.add(drawn.name);
    try {
      await draw(drawn, sheet, context);
    } catch (refused) {
      // Half a sheet helps nobody.
      sheet.delete();
      await context.sync();
      throw refused;
    }
    return `Added the sheet ${drawn.name}. Its example rows are invented: type over them`;
  });
}

async function freeNames(definition: TableSheet, context: Excel.RequestContext) {
  const { worksheets, tables, names } = context.workbook;
  for (const collection of [worksheets, tables, names]) collection.load("items/name");
  await context.sync();
  const sheetNames = worksheets.items.map(({ name }) => name);
  const takenByCells = [...tables.items, ...names.items].map(({ name }) => name);
  return {
    sheet: freeSheetName(definition.title, sheetNames),
    table: freeTableName(definition.table, takenByCells),
  };
}

async function draw(drawn: LaidOut, sheet: Excel.Worksheet, context: Excel.RequestContext): Promise<void> {
  const blocks = blocksOf(drawn);
  // What a formula points at comes first: entries, then the table itself, then formulas.
  for (const block of blocks.filter(({ isFormula }) => !isFormula)) fill(block, sheet);
  addTable(drawn, sheet);
  await context.sync();
  for (const block of blocks.filter(({ isFormula }) => isFormula)) fill(block, sheet);
  layOut(drawn, sheet);
  setPages(drawn, sheet);
  await addChoices(context, sheet, drawn.choices);
  sheet.activate();
  await context.sync();
}

function fill({ row, column, contents, isFormula, format, look }: Block, sheet: Excel.Worksheet): void {
  const range = sheet.getRangeByIndexes(row - 1, column - 1, contents.length, 1);
  const cells = contents.map((content) => [content]);
  // The format comes first: text must be text before 5/4 gets there.
  if (format !== undefined) range.numberFormat = contents.map(() => [format]);
  if (isFormula) range.formulas = cells;
  else range.values = cells;
  dress(range, LOOKS[look]);
}

function dress({ format }: Excel.Range, { bold, size, ink, fill, wrap, indent, edge }: Appearance): void {
  if (bold) format.font.bold = true;
  if (size) format.font.size = size;
  if (ink) format.font.color = ink;
  if (fill) format.fill.color = fill;
  if (wrap) {
    format.wrapText = true;
    format.verticalAlignment = "Top";
  }
  if (indent) format.indentLevel = 1;
  if (edge)
    for (const side of ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal"] as const)
      format.borders.getItem(side).color = edge;
}

function addTable({ table }: LaidOut, sheet: Excel.Worksheet): void {
  const last = columnLetters(table.columns.length - 1);
  const added = sheet.tables.add(`A${table.headerRow}:${last}${table.lastRow}`, true);
  added.name = table.name;
  added.style = "TableStyleLight1";
  added.showBandedRows = false;
  added.showFilterButton = false;
}

function layOut({ across, table, widths, frozenRows }: LaidOut, sheet: Excel.Worksheet): void {
  widths.forEach((characters, i) => {
    const letters = columnLetters(i);
    sheet.getRange(`${letters}:${letters}`).format.columnWidth = (characters + 1) * CHARACTER_WIDTH;
  });
  for (const { row, columns, lines } of across) {
    const range = sheet.getRange(`A${row}:${columnLetters(columns - 1)}${row}`);
    range.merge();
    range.format.rowHeight = lines * LINE_HEIGHT;
  }
  sheet.getRange("1:1").format.rowHeight = TITLE_HEIGHT;
  sheet.getRange(`${table.headerRow - 1}:${table.headerRow - 1}`).format.rowHeight = NOTE_LINES * LINE_HEIGHT;
  sheet.getRange(`${table.headerRow}:${table.headerRow}`).format.rowHeight = 2 * LINE_HEIGHT;
  if (frozenRows > 0) sheet.freezePanes.freezeRows(frozenRows);
}
