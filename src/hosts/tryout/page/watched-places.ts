import { ICommandService, type ICommandInfo, type IRange } from "@univerjs/core";
import { carriedStep, cellsStep, movedPlaces, stretchStep, type PlaceStep } from "../saving/moved-places";
import type { Grid } from "./grid";

interface Carried {
  subUnitId: string;
  value: unknown;
}

/** What the engine tells of a step that moves places. */
interface Told {
  subUnitId: string;
  range: IRange;
  sourceRange: IRange;
  targetRange: IRange;
  from: Carried;
  to: Carried;
  fromRange: IRange;
  toRange: IRange;
}

const rowsOf = ({ startRow, endRow }: IRange) => ({ first: startRow, last: endRow });
const columnsOf = ({ startColumn, endColumn }: IRange) => ({ first: startColumn, last: endColumn });

/** By the engine's name for a step, what it does to places. */
const STEPS: Readonly<Record<string, (told: Told) => PlaceStep>> = {
  "sheet.mutation.insert-row": (told) => stretchStep(told.subUnitId, "rows", true, rowsOf(told.range)),
  "sheet.mutation.remove-rows": (told) => stretchStep(told.subUnitId, "rows", false, rowsOf(told.range)),
  "sheet.mutation.insert-col": (told) => stretchStep(told.subUnitId, "columns", true, columnsOf(told.range)),
  "sheet.mutation.remove-col": (told) => stretchStep(told.subUnitId, "columns", false, columnsOf(told.range)),
  "sheet.mutation.move-rows": ({ subUnitId, sourceRange, targetRange }) =>
    carriedStep(subUnitId, "rows", rowsOf(sourceRange), targetRange.startRow),
  "sheet.mutation.move-columns": ({ subUnitId, sourceRange, targetRange }) =>
    carriedStep(subUnitId, "columns", columnsOf(sourceRange), targetRange.startColumn),
  "sheet.mutation.move-range": ({ from, to, fromRange, toRange }) =>
    cellsStep({ sheet: from.subUnitId, cells: spoken(fromRange) }, { sheet: to.subUnitId, cells: spoken(toRange) }),
};

function spoken({ startRow, startColumn, endRow, endColumn }: IRange): string {
  return [startRow, startColumn, endRow, endColumn].join(" ");
}

/** Follows from now on what moves the places of cells. Rows and columns behind all that the file has move nothing. */
export function watchedPlaces(grid: Grid, sizeOf: (sheet: string) => { rows: number; columns: number } | undefined) {
  const places = movedPlaces();
  grid.injector.get(ICommandService).onCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    const step = STEPS[id];
    if (!step || isBehindAll(id, params as Told, sizeOf)) return;
    places.happened(step(params as Told));
  });
  return places;
}

function isBehindAll(id: string, { subUnitId, range }: Told, sizeOf: Parameters<typeof watchedPlaces>[1]): boolean {
  if (!/(?:insert|remove)-(?:row|col)/.test(id)) return false;
  const size = sizeOf(subUnitId);
  // A sheet that the file does not have is saved as it stands.
  if (!size) return true;
  return id.includes("row") ? range.startRow >= size.rows : range.startColumn >= size.columns;
}
