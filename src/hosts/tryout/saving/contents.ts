import type { IStyleData } from "@univerjs/core";
import type { Block } from "../../../formula/addresses";
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
  /** Put away by the person. */
  hidden: boolean;
}

/** All that the grid holds at one time. */
export interface GridContents {
  sheets: SheetContents[];
  /** The names of the workbook and what each stands for. */
  names: Record<string, string>;
}
