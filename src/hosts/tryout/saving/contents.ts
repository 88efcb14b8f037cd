import type { IStyleData } from "@univerjs/core";
import { placeOf, type Block } from "../../../formula/addresses";
import type { Held } from "../../../xlsx/held";

/** A cell of the grid that holds something, or is filled by another cell's answer. */
export interface CellContents {
  row: number;
  column: number;
  /** What it shows; an error is its text. */
  value: Held;
  /** As typed, with its equals sign. */
  formula?: string;
  /** The cells that its answer fills, where that is more than the cell itself. */
  fills?: Block;
  /** Another cell's answer stands here. */
  spilled?: true;
  /** How it shows numbers, where that was said. */
  format?: string;
  /** The rest of its look. */
  style?: IStyleData;
}

/** How a sheet is laid out, in pixels, as far as a new sheet of a file takes it over. */
export interface SheetFrame {
  widths: Record<number, number>;
  heights: Record<number, number>;
  merges: Block[];
  frozen: { rows: number; columns: number };
}

export interface SheetContents {
  /** The grid's own name for the sheet, which stays when the sheet is called otherwise. */
  id: string;
  name: string;
  cells: CellContents[];
  frame: SheetFrame;
  /** The looks of all its cells, empty ones too, in letters that are equal for equal looks only. */
  looks: string;
  /** Put away by the person. */
  hidden: boolean;
}

/** All that the grid holds at one time. */
export interface GridContents {
  sheets: SheetContents[];
  /** The names of the workbook and what each stands for. */
  names: Record<string, string>;
}

/**
 * What a workbook held when it was opened, with the answers that it had been given once it was calculated. What a person
 * typed in between is not a part of it.
 */
export function asOpened(atFirst: GridContents, calculated: GridContents): GridContents {
  const later = new Map(calculated.sheets.map((sheet) => [sheet.id, sheet]));
  const sheets = atFirst.sheets.map((sheet) => {
    const answers = new Map(later.get(sheet.id)?.cells.map((cell) => [placeOf(cell), cell]));
    const own = sheet.cells.map((cell) => {
      const answered = answers.get(placeOf(cell));
      return answered?.formula !== undefined && answered.formula === cell.formula ? answered : cell;
    });
    const spilled = [...answers.values()].filter((cell) => cell.spilled);
    return { ...sheet, cells: [...own.filter((cell) => !cell.spilled), ...spilled] };
  });
  return { ...atFirst, sheets };
}
