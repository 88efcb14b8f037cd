import type { Content } from "../../../xlsx/write/book";
import { shownFormula } from "../../../formula/stored";
import { type CellOptions, entry, figure } from "./cells";
import { heading, type Page, put, setHeight } from "./page";
import { CAUTION, HEADER, PROSE, SMALL_PROSE, UNIT } from "./style";

/** A line of a sheet of figures: what it is, the figure, its unit, how it is worked out, and a caution beside it. */
export interface Line extends CellOptions {
  label: string;
  /** Typed by the sawyer. */
  value?: Content;
  /** Worked out, as typed in Excel. */
  formula?: string;
  unit?: string;
  /** Where a typed value comes from, or what to watch. */
  says?: string;
  caution?: string;
}

/** Columns of a sheet of figures: label, figure, unit, how, caution. */
export const FIGURE_WIDTHS = [36, 13, 12, 52, 44];

export function figureHeader(page: Page, row: number): void {
  ["What", "Figure", "Unit", "How it is worked out, or where it comes from", "Caution"].forEach((text, i) =>
    put(page, `${"ABCDE"[i]}${row}`, text, HEADER),
  );
}

/** Draws a heading and its lines; returns the first free row, one blank row on. */
export function drawLines(page: Page, row: number, title: string, lines: readonly Line[]): number {
  heading(page, row, title);
  lines.forEach((line, i) => drawLine(page, row + 1 + i, line));
  return row + lines.length + 2;
}

function drawLine(page: Page, row: number, line: Line): void {
  put(page, `A${row}`, line.label, PROSE);
  if (line.formula) figure(page, `B${row}`, line.formula, line);
  else entry(page, `B${row}`, line.value ?? null, line);
  put(page, `C${row}`, line.unit ?? "", UNIT);
  put(page, `D${row}`, shownFormula(line.formula ?? line.says ?? ""), SMALL_PROSE);
  if (line.caution) put(page, `E${row}`, line.caution, CAUTION);
  setHeight(
    page,
    row,
    15.5 * Math.max(1, linesOf(line.label, 34), linesOf(line.formula ?? line.says, 52), linesOf(line.caution, 42)),
  );
}

function linesOf(text: string | undefined, perLine: number): number {
  return Math.ceil((text?.length ?? 0) / perLine);
}
