import { IEditorBridgeService } from "@univerjs/preset-sheets-core";
import { cellAnswer, type CellAnswer } from "../../../engine/answers";
import type { CellPlace } from "../../../engine/origin";
import { addressOf } from "../../../formula/addresses";
import { dateWarning } from "../../pane/this-cell";
import type { Grid } from "./grid";
import type { SelectedCell } from "./panel";
import { readerOf } from "./reader";

/** Digits that a spreadsheet keeps of a number. */
const DIGITS = 15;

/** What there is to say of the cell that is selected in the grid, after something was typed into another. */
export function selectedCell(grid: Grid, typedLast?: CellPlace): SelectedCell | undefined {
  const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
  const range = sheet?.getSelection()?.getActiveRange();
  if (!sheet || !range) return undefined;
  const place = { sheet: sheet.getSheetName(), row: range.getRow(), column: range.getColumn() };
  const reader = readerOf(grid);
  const home = reader.homeOf(place);
  const answer = cellAnswer(reader.heldAt(place), (error) => reader.whyAt(place, error));
  const format = range.getNumberFormat();
  const formula = reader.formulaAt(home);
  // A day is shown as a day; any other number with all its digits.
  const text = isDay(format) ? range.getDisplayValue() : shown(answer);
  const spilled = home.row !== place.row || home.column !== place.column;
  const at = { unit: sheet.getWorkbook().getUnitId(), sheet: sheet.getSheetId(), row: home.row, column: home.column };
  return {
    name: `${place.sheet}, ${addressOf(place.row, place.column)}`,
    formula,
    spilledFrom: spilled ? addressOf(home.row, home.column) : undefined,
    answer: text,
    link: linkIn(grid, reader.heldAt(place)?.custom?.["leadsTo"]),
    endView: /\bCUTPLAN\(/i.test(formula) ? grid.plans.drawnAt(at) : undefined,
    why: typeof answer === "object" ? answer.message : undefined,
    value: typeof answer === "object" ? undefined : answer,
    becameDay: typedLast && !isSame(typedLast, place) ? becameDay(grid, typedLast) : undefined,
    typing: !formula && !text && grid.injector.get(IEditorBridgeService).isVisible().visible,
    format,
  };
}

/** Enter goes on to the next cell, so what became of 5/4 is told there too. */
function becameDay(grid: Grid, place: CellPlace): string | undefined {
  const range = grid.api.getActiveWorkbook()?.getSheetByName(place.sheet)?.getRange(place.row, place.column);
  const reader = readerOf(grid);
  const address = addressOf(place.row, place.column);
  const value = cellAnswer(reader.heldAt(place), () => undefined);
  const warning = dateWarning({ address, formula: reader.formulaAt(place), value, format: range?.getNumberFormat() });
  return warning && `Just typed into ${address}: ${warning}`;
}

function isSame(one: CellPlace, other: CellPlace): boolean {
  return one.sheet === other.sheet && one.row === other.row && one.column === other.column;
}

function isDay(format: string): boolean {
  return /[dmy]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, ""));
}

function linkIn({ api }: Grid, leadsTo: unknown): SelectedCell["link"] {
  const book = api.getActiveWorkbook();
  const sheet = typeof leadsTo === "string" ? book?.getSheetByName(leadsTo) : undefined;
  return sheet ? { sheet: sheet.getSheetName(), follow: () => void book?.setActiveSheet(sheet) } : undefined;
}

function shown(answer: CellAnswer): string {
  if (typeof answer === "object") return answer.error;
  if (typeof answer === "boolean") return answer ? "TRUE" : "FALSE";
  return typeof answer === "number" ? String(Number(answer.toPrecision(DIGITS))) : answer;
}
