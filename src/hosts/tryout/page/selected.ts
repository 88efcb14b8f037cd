import type { IRange } from "@univerjs/core";
import { FormulaDataModel, IFunctionService } from "@univerjs/preset-sheets-core";
import { cellAnswer, type CellAnswer } from "../bridge/answers";
import { explain } from "../bridge/explain";
import { addressOf } from "../workbook/addresses";
import type { Grid } from "./grid";
import type { SelectedCell } from "./panel";

/** Digits that a spreadsheet keeps of a number. */
const DIGITS = 15;

/** What there is to say of the cell that is selected in the grid. */
export function selectedCell({ api, injector, messages }: Grid): SelectedCell | undefined {
  const sheet = api.getActiveWorkbook()?.getActiveSheet();
  const range = sheet?.getSelection()?.getActiveRange();
  if (!sheet || !range) return undefined;
  const [row, column] = [range.getRow(), range.getColumn()];
  const [unit, sheetId] = [sheet.getWorkbook().getUnitId(), sheet.getSheetId()];
  const model = injector.get(FormulaDataModel);
  const ranges = model.getArrayFormulaRange()[unit]?.[sheetId];
  const home = homeOf(row, column, ranges) ?? { row, column };
  const formula = sheet.getRange(home.row, home.column).getFormula();
  const names = [...injector.get(IFunctionService).getExecutors().keys()].map(String);

  const why = (error: string) =>
    messages.why({ unit, sheet: sheetId, ...home }, error, row - home.row, column - home.column) ??
    explain(formula, error, names);
  const spilled = home.row !== row || home.column !== column;
  // As it is held, not as it is shown: 72.96875 rather than 73.0.
  const held = spilled
    ? model.getArrayFormulaCellData()[unit]?.[sheetId]?.[row]?.[column]
    : sheet.getSheet().getCellRaw(row, column);
  const answer = cellAnswer(held, why);
  return {
    name: `${sheet.getSheetName()}, ${addressOf(row, column)}`,
    formula,
    spilledFrom: spilled ? addressOf(home.row, home.column) : undefined,
    answer: shown(answer),
    why: typeof answer === "object" ? answer.message : undefined,
  };
}

/** The cell whose answer spills over a place. */
function homeOf(row: number, column: number, ranges: Ranges): { row: number; column: number } | undefined {
  for (const [homeRow, columns] of Object.entries(ranges ?? {}))
    for (const [homeColumn, range] of Object.entries(columns ?? {}))
      if (row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn)
        return { row: Number(homeRow), column: Number(homeColumn) };
  return undefined;
}

type Ranges = Record<number, Record<number, IRange> | null | undefined | void> | null | undefined | void;

function shown(answer: CellAnswer): string {
  if (typeof answer === "object") return answer.error;
  if (typeof answer === "boolean") return answer ? "TRUE" : "FALSE";
  return typeof answer === "number" ? String(Number(answer.toPrecision(DIGITS))) : answer;
}
