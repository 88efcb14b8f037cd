import { cellAnswer, type CellAnswer } from "../../../engine/answers";
import { addressOf } from "../../../formula/addresses";
import type { Grid } from "./grid";
import type { SelectedCell } from "./panel";
import { readerOf } from "./reader";

/** Digits that a spreadsheet keeps of a number. */
const DIGITS = 15;

/** What there is to say of the cell that is selected in the grid. */
export function selectedCell(grid: Grid): SelectedCell | undefined {
  const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
  const range = sheet?.getSelection()?.getActiveRange();
  if (!sheet || !range) return undefined;
  const place = { sheet: sheet.getSheetName(), row: range.getRow(), column: range.getColumn() };
  const reader = readerOf(grid);
  const home = reader.homeOf(place);
  const answer = cellAnswer(reader.heldAt(place), (error) => reader.whyAt(place, error));
  const format = range.getNumberFormat();
  const spilled = home.row !== place.row || home.column !== place.column;
  const at = { unit: sheet.getWorkbook().getUnitId(), sheet: sheet.getSheetId(), row: home.row, column: home.column };
  return {
    name: `${place.sheet}, ${addressOf(place.row, place.column)}`,
    formula: reader.formulaAt(home),
    spilledFrom: spilled ? addressOf(home.row, home.column) : undefined,
    // A day is shown as a day; any other number with all its digits.
    answer: isDay(format) ? range.getDisplayValue() : shown(answer),
    link: linkIn(grid, reader.heldAt(place)?.custom?.["leadsTo"]),
    endView: /\bCUTPLAN\(/i.test(reader.formulaAt(home)) ? grid.plans.drawnAt(at) : undefined,
    why: typeof answer === "object" ? answer.message : undefined,
    value: typeof answer === "object" ? undefined : answer,
    format,
  };
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
