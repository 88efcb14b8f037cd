import type { Row, TableSheet } from "../../../src/sheets/definition";
import { READY_SHEETS } from "../../../src/sheets/ready";
import { addressOf } from "../../../src/formula/addresses";
import { laidOut, type LaidOut } from "../../../src/sheets/laid-out";
import type { CellAnswer, Engine } from "../../../src/engine/engine";

export type Settings = Readonly<Record<string, string | number>>;

/** A ready sheet by its title. */
export function readySheet(title: string): TableSheet {
  return READY_SHEETS.find((one) => one.title === title)!;
}

/** A ready sheet in plain cells, as it is added. */
export function inCells(title: string): LaidOut {
  return laidInCells(readySheet(title));
}

/** The same with rows typed over its examples, and settings typed over those that are named. */
export function typedOver(title: string, rows: readonly Row[], settings: Settings = {}): LaidOut {
  const sheet = readySheet(title);
  const unknown = Object.keys(settings).filter((label) => !sheet.settings.some((one) => one.label === label));
  if (unknown.length > 0) throw new Error(`The sheet ${title} has no setting ${unknown.join(", ")}`);
  return laidInCells({
    ...sheet,
    settings: sheet.settings.map((setting) => ({ ...setting, value: settings[setting.label] ?? setting.value })),
    examples: rows,
  });
}

function laidInCells(sheet: TableSheet): LaidOut {
  return laidOut(sheet, { sheet: sheet.title, table: sheet.table }, "cells");
}

/** The sheet calculated; an answer is found by its row's label, or by its column's heading and row of the table. */
export async function calculated(engine: Engine, sheet: LaidOut, cleared = false) {
  const typedIn = (cell: LaidOut["cells"][number]) => cell.look === "entry" && cell.row > sheet.table.headerRow;
  const cells = sheet.cells.map((cell) => ({
    row: cell.row - 1,
    column: cell.column - 1,
    value: cell.isFormula || cell.content === "" || (cleared && typedIn(cell)) ? null : cell.content,
    ...(cell.isFormula ? { formula: String(cell.content), stored: String(cell.content).slice(1) } : {}),
  }));
  // The engine's sheet is hardly larger than what is in it, and a plan wants room to spill.
  const room = { row: 59, column: 25, value: " " };
  const book = await engine.calculate({ sheets: [{ name: sheet.name, cells: [...cells, room] }], names: [] });
  return {
    formulaCells: book.formulaCells(),
    at: (address: string): CellAnswer => book.value(sheet.name, address),
    figure: (label: string): CellAnswer => {
      const named = sheet.cells.find(({ content, look }) => content === label && look === "label")!;
      const value = sheet.cells.find(
        ({ row, column, look }) => row === named.row && column > named.column && look === "figure",
      )!;
      return book.value(sheet.name, addressOf(value.row - 1, value.column - 1));
    },
    cell: (heading: string, rowOfTable: number): CellAnswer => {
      const column = sheet.table.columns.findIndex((one) => one.heading === heading) + 1;
      return book.value(sheet.name, addressOf(sheet.table.headerRow + rowOfTable - 1, column - 1));
    },
    beside: (row: number, column: number): CellAnswer => {
      const corner = sheet.cells.find(({ isFormula, look }) => isFormula && look === "spilled")!;
      return book.value(sheet.name, addressOf(corner.row - 2 + row, corner.column - 2 + column));
    },
  };
}
