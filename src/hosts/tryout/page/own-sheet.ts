import { cellAnswer } from "../../../engine/answers";
import { addressOf, type Block } from "../../../formula/addresses";
import type { NewColumn } from "../../pane/fit/new-column";
import { isBlankCell, mustBeReadable, type SheetHere } from "../../pane/fit/sheet-here";
import { Refusal, type SheetHost } from "../../pane/sheet-host";
import type { Grid } from "./grid";
import { readerOf } from "./reader";

/** A person's own sheet in the grid, which knows no tables. */
export function ownSheet(grid: Grid): Pick<SheetHost, "sheetHere" | "addColumn" | "whenChosen"> {
  const { api } = grid;

  async function sheetHere(): Promise<SheetHere> {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const range = sheet?.getSelection()?.getActiveRange();
    if (!sheet || !range) throw new Refusal("Choose one cell of the sheet first");
    const name = sheet.getSheetName();
    const block = { top: 0, left: 0, bottom: sheet.getLastRow(), right: sheet.getLastColumn() };
    mustBeReadable(name, (block.bottom + 1) * (block.right + 1));
    const values = contentsOf(grid, name, block);
    const formulas = formulasOf(grid, name, block, values);
    return {
      sheet: name,
      chosen: { row: range.getRow(), column: range.getColumn() },
      top: 0,
      left: 0,
      values,
      formulas,
    };
  }

  async function addColumn({ sheet, column, headingRow, heading, formulas }: NewColumn): Promise<string> {
    const page = api.getActiveWorkbook()?.getSheetByName(sheet);
    if (!page) throw new Refusal(`There is no sheet ${sheet} any more`);
    const bottom = headingRow + formulas.length;
    const block = { top: headingRow, left: column, bottom, right: column };
    const held = formulasOf(grid, sheet, block, contentsOf(grid, sheet, block));
    const taken = held.findIndex(([cell]) => !isBlankCell(cell));
    if (taken >= 0)
      throw new Refusal(`${sheet}!${addressOf(headingRow + taken, column)} is no longer empty, so nothing was added`);
    const missing = column + 1 - page.getMaxColumns();
    if (missing > 0) page.insertColumnsAfter(page.getMaxColumns() - 1, missing);
    const cells = [{ v: heading }, ...formulas.map((formula) => (formula === "" ? {} : { f: formula }))];
    page.getRange(headingRow, column, cells.length, 1).setValues(cells.map((cell) => [cell]));
    return `${sheet}!${addressOf(headingRow, column)}:${addressOf(bottom, column)} now holds ${heading}`;
  }

  function whenChosen(told: () => void): void {
    api.addEvent(api.Event.SelectionChanged, told);
    api.addEvent(api.Event.ActiveSheetChanged, told);
  }

  return { sheetHere, addColumn, whenChosen };
}

/** What cells hold: nothing for an empty one, the name of an error for one. */
export function contentsOf(grid: Grid, sheet: string, { top, left, bottom, right }: Block): unknown[][] {
  const reader = readerOf(grid);
  return Array.from({ length: bottom - top + 1 }, (_, row) =>
    Array.from({ length: right - left + 1 }, (_, column) => {
      const answer = cellAnswer(reader.heldAt({ sheet, row: top + row, column: left + column }), () => undefined);
      return answer === "" ? null : typeof answer === "object" ? answer.error : answer;
    }),
  );
}

/** The formulas of cells, and what the others hold. */
function formulasOf(grid: Grid, sheet: string, { top, left }: Block, values: unknown[][]): unknown[][] {
  const { formulaAt } = readerOf(grid);
  return values.map((line, row) =>
    line.map((value, column) => formulaAt({ sheet, row: top + row, column: left + column }) || value),
  );
}
