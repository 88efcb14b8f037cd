import { placeOf, type Block } from "../../../formula/addresses";
import type { Held } from "../../../xlsx/held";
import type { CellContents, GridContents, SheetContents } from "./contents";

/** What becomes of a cell of the file. */
export interface ChangedCell {
  row: number;
  column: number;
  value: Held;
  /** The formula of the file stays, and answers otherwise now. */
  answered?: true;
  /** The formula that was typed, with its equals sign. */
  formula?: string;
  fills?: Block;
  /** Another cell's answer stands here. */
  spilled?: true;
  /** How it shows numbers from now on. */
  format?: string;
}

/** What a person has made of a workbook since it was opened. */
export interface Changes {
  /** By the sheet's name in the file. */
  cells: { sheet: string; cells: ChangedCell[] }[];
  /** Sheets that the file does not have. */
  added: SheetContents[];
  /** What the file will not show, in words. */
  left: string[];
}

/** Compares what the grid holds with what it held when the workbook had been opened and calculated. */
export function changesSince(before: GridContents, now: GridContents, ownSheets: ReadonlySet<string>): Changes {
  const known = new Map(now.sheets.map((sheet) => [sheet.id, sheet]));
  const opened = before.sheets.filter(({ id }) => !ownSheets.has(id));
  const pairs = opened.flatMap((sheet) => {
    const later = known.get(sheet.id);
    return later ? [{ sheet, later, cells: changedCells(sheet.cells, later.cells) }] : [];
  });
  const openedIds = new Set(opened.map(({ id }) => id));
  return {
    cells: pairs.filter(({ cells }) => cells.length > 0).map(({ sheet: { name }, cells }) => ({ sheet: name, cells })),
    added: now.sheets.filter(({ id, cells }) => !openedIds.has(id) && cells.length > 0),
    left: [...emptySheets(before, now, openedIds), ...pairs.flatMap(({ sheet, later }) => notSaved(sheet, later))],
  };
}

/** What was typed, and not what followed from it by calculating: by this a page knows whether anything is unsaved. */
export function typedIn({ cells, added }: Changes): string {
  const typed = cells.map(({ sheet, cells: own }) => [
    sheet,
    own.filter(({ answered, spilled }) => !answered && !spilled).map(withoutAnswer),
  ]);
  const own = added.map(({ name, cells: all }) => [name, all.filter(({ spilled }) => !spilled).map(withoutAnswer)]);
  return JSON.stringify([typed.filter(([, list]) => list!.length > 0), own]);
}

function withoutAnswer({ row, column, value, formula, format }: ChangedCell | CellContents): unknown[] {
  return [row, column, formula ?? value, format];
}

function changedCells(before: readonly CellContents[], now: readonly CellContents[]): ChangedCell[] {
  const old = new Map(before.map((cell) => [placeOf(cell), cell]));
  const changed = now.flatMap((cell) => {
    const key = placeOf(cell);
    const earlier = old.get(key);
    old.delete(key);
    return changeOf(earlier, cell);
  });
  const emptied = [...old.values()].map(({ row, column }): ChangedCell => ({ row, column, value: null }));
  return [...changed, ...emptied];
}

function changeOf(before: CellContents | undefined, now: CellContents): ChangedCell[] {
  const { row, column, value, formula, fills, spilled, format } = now;
  const sameFormula = before !== undefined && before.formula === formula && before.spilled === spilled;
  const sameAnswer = before?.value === value && JSON.stringify(before?.fills) === JSON.stringify(fills);
  const sameFormat = before?.format === format;
  if (sameFormula && sameAnswer && sameFormat) return [];
  return [
    {
      ...{ row, column, value },
      ...(formula !== undefined && (sameFormula ? { answered: true as const } : { formula })),
      ...(fills && { fills }),
      ...(spilled && { spilled }),
      ...(!sameFormat && !spilled && { format: format ?? "General" }),
    },
  ];
}

/** A sheet that holds nothing is left out; the free sheet of the page, which nobody put there, without a word. */
function emptySheets(before: GridContents, now: GridContents, openedIds: ReadonlySet<string>): string[] {
  const there = new Set(before.sheets.map(({ id }) => id));
  return now.sheets
    .filter(({ id, cells }) => !openedIds.has(id) && !there.has(id) && cells.length === 0)
    .map(({ name }) => `the sheet ${name}, which is empty`);
}

/** Changes of a sheet of the file that are seen in the page and do not reach the copy. */
function notSaved(before: SheetContents, now: SheetContents): string[] {
  const differs = (of: (sheet: SheetContents) => unknown) => JSON.stringify(of(before)) !== JSON.stringify(of(now));
  const kinds = [
    before.looks !== now.looks && "colours, fonts and borders that were changed",
    differs(({ frame }) => frame.merges) && "cells that were merged or taken apart",
    differs(({ frame }) => frame.widths) && "widths of columns that were changed",
    differs(({ frame }) => frame.frozen) && "rows and columns that were frozen or set free",
    before.hidden !== now.hidden && "that the sheet was hidden or shown",
  ];
  return kinds.flatMap((kind) => (kind ? [`on the sheet ${before.name} ${kind}`] : []));
}
