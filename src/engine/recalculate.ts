import type { ICellData, IWorkbookData, Nullable } from "@univerjs/core";
import { addressOf, cellAt, type Block } from "../formula/addresses";
import type { DefinedName } from "../formula/defined-name";
import type { Held } from "../xlsx/held";
import type { FileWorkbook } from "./workbook/read";
import { cellAnswer, type CellAnswer } from "./answers";
import { explain } from "./explain";
import type { Messages } from "./messages";
import type { EngineSheet, Spreadsheet } from "./node";
import { spills } from "./spills";

/** A calculating cell of an opened workbook: what the file said and what the engine says. */
export interface FormulaCell {
  sheet: string;
  address: string;
  /** As a person would type it, table references as ranges. */
  formula: string;
  /** As the file stores it, without the equals sign. */
  stored: string;
  cached: Held;
  recalculated: CellAnswer;
  /** The block that the answer fills, when that is more than the cell itself. */
  filled?: Block;
}

export interface OpenedWorkbook {
  sheets: string[];
  names: DefinedName[];
  /** What a cell shows after recalculation; a blank cell is "". */
  value(sheet: string, address: string): CellAnswer;
  /** The same as the cell's number format shows it: `$1,234.50`. */
  text(sheet: string, address: string): string;
  formulaCells(): FormulaCell[];
  /** The workbook as the page's grid takes it. */
  snapshot: IWorkbookData;
}

/** Even a slow machine is done by then; what takes longer never ends. */
const CALCULATION_LIMIT_MS = 120_000;
const LIMIT_PER_FORMULA_MS = 2;

/** Calculates every formula of a workbook afresh and keeps what the cells then show. */
export async function recalculate(
  file: FileWorkbook,
  snapshot: IWorkbookData,
  spreadsheet: Spreadsheet,
  messages: Messages,
): Promise<OpenedWorkbook> {
  const { api, injector, parts } = spreadsheet;
  messages.newRun();
  const book = api.createWorkbook(structuredClone(snapshot));
  await calculateAll(spreadsheet, CALCULATION_LIMIT_MS + LIMIT_PER_FORMULA_MS * formulasIn(file));
  const names = [...injector.get(parts.IFunctionService).getExecutors().keys()].map(String);
  const shown = new Map<string, CellAnswer>();
  const filled = new Map<string, Block>();
  for (const [at, sheet] of book.getSheets().entries()) {
    const formulas = new Map(file.sheets[at]?.cells.map((cell) => [addressOf(cell.row, cell.column), cell.formula]));
    for (const { row, column, cell, home } of shownCells(sheet, snapshot.id, spreadsheet)) {
      const place = { unit: snapshot.id, sheet: sheet.getSheetId(), ...home };
      const formula = formulas.get(addressOf(home.row, home.column)) ?? "";
      const why = (error: string) =>
        explain(formula, error, messages.why(place, error, row - home.row, column - home.column), names);
      shown.set(keyOf(sheet.getSheetName(), addressOf(row, column)), cellAnswer(cell, why));
      if (row === home.row && column === home.column) continue;
      const key = keyOf(sheet.getSheetName(), addressOf(home.row, home.column));
      const { bottom, right } = filled.get(key) ?? { bottom: row, right: column };
      const corner = { bottom: Math.max(bottom, row), right: Math.max(right, column) };
      filled.set(key, { top: home.row, left: home.column, ...corner });
    }
  }
  api.disposeUnit(snapshot.id);
  return opened(file, snapshot, shown, filled, spreadsheet.format);
}

/** Until the results stand in the cells. What is waited for at first may be a calculation begun for the workbook before. */
export async function calculateAll(
  { api, calculations }: { api: Pick<Spreadsheet["api"], "getFormula">; calculations(): number },
  limit: number,
): Promise<void> {
  const before = calculations();
  const applied = () => api.getFormula().onCalculationResultApplied(limit);
  const first = applied();
  api.getFormula().executeCalculation();
  await first;
  while (calculations() === before) await applied();
}

function formulasIn({ sheets }: FileWorkbook): number {
  return sheets.reduce((sum, { cells }) => sum + cells.filter(({ formula }) => formula !== undefined).length, 0);
}

interface ShownCell {
  row: number;
  column: number;
  cell: Nullable<ICellData>;
  /** The cell whose formula answers here: another one where an answer spills. */
  home: { row: number; column: number };
}

/** Every cell of a sheet that holds something, those that a spilled answer fills included. */
function shownCells(sheet: EngineSheet, unit: string, { injector, parts }: Spreadsheet): ShownCell[] {
  const model = injector.get(parts.FormulaDataModel);
  const values = model.getArrayFormulaCellData()[unit]?.[sheet.getSheetId()];
  const cells = new Map<string, ShownCell>();
  const grid = sheet.getSheet();
  grid.getCellMatrix().forValue((row, column) => {
    cells.set(addressOf(row, column), { row, column, cell: grid.getCell(row, column), home: { row, column } });
  });
  const keep = (row: number, column: number, home: ShownCell["home"]) => {
    // Where something is in an answer's way nothing spills, and the cell keeps what it holds.
    const cell = values?.[row]?.[column];
    if (cell) cells.set(addressOf(row, column), { row, column, cell, home });
  };
  for (const { home, range } of spills(model.getArrayFormulaRange()[unit]?.[sheet.getSheetId()]))
    for (let row = range.startRow; row <= range.endRow; row++)
      for (let column = range.startColumn; column <= range.endColumn; column++) keep(row, column, home);
  return [...cells.values()];
}

function keyOf(sheet: string, address: string): string {
  return `${sheet}|${address}`;
}

function opened(
  file: FileWorkbook,
  snapshot: IWorkbookData,
  shown: Map<string, CellAnswer>,
  filled: Map<string, Block>,
  format: Spreadsheet["format"],
): OpenedWorkbook {
  const sheets = file.sheets.map((sheet) => sheet.name);
  const value = (sheet: string, address: string): CellAnswer => {
    if (!sheets.includes(sheet)) throw new Error(`The workbook has no sheet ${sheet}; it has ${sheets.join(", ")}`);
    const { row, column } = cellAt(address);
    return shown.get(keyOf(sheet, addressOf(row, column))) ?? "";
  };
  const formulaCells = (): FormulaCell[] =>
    file.sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ row, column, formula, stored, value: cached }) => {
        if (formula === undefined || stored === undefined) return [];
        const address = addressOf(row, column);
        const block = filled.get(keyOf(name, address));
        const cell = { sheet: name, address, formula, stored, cached, recalculated: value(name, address) };
        return [block ? { ...cell, filled: block } : cell];
      }),
    );
  const text = (sheet: string, address: string): string => {
    const { row, column } = cellAt(address);
    const looks = file.sheets.find(({ name }) => name === sheet)?.looks?.cells;
    const look = looks?.find((cell) => cell.row === row && cell.column === column)?.look;
    return formatted(value(sheet, address), look?.numberFormat, format);
  };
  return { sheets, names: file.names, value, text, formulaCells, snapshot };
}

function formatted(answer: CellAnswer, numberFormat: string | undefined, format: Spreadsheet["format"]): string {
  if (typeof answer === "object") return answer.error;
  if (typeof answer === "boolean") return answer ? "TRUE" : "FALSE";
  return typeof answer === "number" ? format(numberFormat ?? "General", answer) : answer;
}
