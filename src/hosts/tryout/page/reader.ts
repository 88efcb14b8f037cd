import { isWithin } from "../../../formula/addresses";
import type { ICellData, Nullable } from "@univerjs/core";
import { FormulaDataModel, IDefinedNamesService, IFunctionService } from "@univerjs/preset-sheets-core";
import { cellAnswer } from "../../../engine/answers";
import { explain } from "../../../engine/explain";
import { originOf, spoken, type CellPlace } from "../../../engine/origin";
import { spills, type Spill, type SpillRanges } from "../../../engine/spills";
import { blockOfRange } from "./block-of";
import type { Grid } from "./grid";

/** Reads the workbook in the grid: what cells hold, where a spilled answer comes from, why a cell shows an error. */
export function readerOf({ api, injector, messages }: Grid) {
  const book = api.getActiveWorkbook();
  const unit = book?.getId() ?? "";
  const model = injector.get(FormulaDataModel);
  const sheetNamed = (name: string) => book?.getSheetByName(name);

  /** The cell whose formula answers at a place: another one where an answer spills. */
  function homeOf(place: CellPlace): CellPlace {
    const sheet = sheetNamed(place.sheet);
    const id = sheet?.getSheetId() ?? "";
    const own = sheet?.getSheet().getCellRaw(place.row, place.column);
    const ranges = model.getArrayFormulaRange()[unit]?.[id];
    if (calculates(own) || !spilledAt(id, place)) return place;
    return { ...place, ...(cornerOf(place, ranges) ?? {}) };
  }

  const spilledAt = (id: string, { row, column }: CellPlace): Nullable<ICellData> =>
    model.getArrayFormulaCellData()[unit]?.[id]?.[row]?.[column];

  /** As it is held, not as it is shown: 72.96875 rather than 73.0. */
  function heldAt(place: CellPlace): Nullable<ICellData> {
    const sheet = sheetNamed(place.sheet);
    const own = sheet?.getSheet().getCellRaw(place.row, place.column);
    return calculates(own) || isFull(own) ? own : spilledAt(sheet?.getSheetId() ?? "", place);
  }

  function formulaAt(place: CellPlace): string {
    return sheetNamed(place.sheet)?.getRange(place.row, place.column).getFormula() ?? "";
  }

  function errorAt(place: CellPlace): string | undefined {
    const answer = cellAnswer(heldAt(place), () => undefined);
    return typeof answer === "object" ? answer.error : undefined;
  }

  /** The reason that one of our functions gave for the error of a cell. */
  function said(place: CellPlace, error: string): string | undefined {
    const home = homeOf(place);
    const sheet = sheetNamed(place.sheet)?.getSheetId() ?? "";
    const { row, column } = home;
    return messages.why({ unit, sheet, row, column }, error, place.row - row, place.column - column);
  }

  /** Why a cell shows an error: its own reason, or that of the cell it comes from. */
  function whyAt(place: CellPlace, error: string): string | undefined {
    const own = said(place, error);
    if (own && !own.endsWith(`the cell holds ${error}`)) return own;
    const names = injector.get(IDefinedNamesService);
    const named = (name: string) => names.getValueByName(unit, name)?.formulaOrRefString;
    const origin = originOf(homeOf(place), error, { errorAt, formulaAt: (at) => formulaAt(homeOf(at)), named });
    const known = () => [...injector.get(IFunctionService).getExecutors().keys()].map(String);
    if (!origin) return explain(formulaAt(homeOf(place)), error, own, known());
    const reason = explain(formulaAt(homeOf(origin)), error, said(origin, error), known());
    return `It comes from ${spoken(origin, place.sheet)}${reason ? `: ${reason}` : "."}`;
  }

  return { homeOf, heldAt, formulaAt, whyAt };
}

/** A copied formula is kept under a number that it shares with the first. */
function calculates(cell: Nullable<ICellData>): boolean {
  return Boolean(cell?.f ?? cell?.si);
}

function isFull(cell: Nullable<ICellData>): boolean {
  return cell?.v !== undefined && cell.v !== null && cell.v !== "";
}

/** The cell whose answer spills over a place. */
function cornerOf({ row, column }: CellPlace, ranges: SpillRanges): Spill["home"] | undefined {
  return spills(ranges).find(({ range }) => isWithin({ row, column }, blockOfRange(range)))?.home;
}
