import type { TableSheet } from "./definition";
import { fitsAcross, scaleFor } from "./paper";

/** How a sheet goes onto paper, for a host or a file to say in its own words. */
export interface OnPaper {
  landscape: boolean;
  /** Columns, counted from 0, that begin another page across. */
  pageStarts: number[];
  /** In percent; a sheet without one is made as wide as a page. */
  scale?: number;
  /** Prints the table and nothing else, its first column again on each page across: what stands above it would be cut there. */
  tableAlone: boolean;
  /** The last column that is printed, counted from 0. */
  lastColumn: number;
}

/** Pages begin where the sheet says so; an answer beside the table begins one if both would be too small to read. */
export function onPaper({ columns, beside, print }: TableSheet, widths: readonly number[]): OnPaper {
  const landscape = !print?.upright;
  const asked = (print?.newPageAt ?? []).map((heading) => columns.findIndex((column) => column.heading === heading));
  const tableAlone = asked.length > 0;
  const onlyTable = tableAlone || print?.withoutBeside;
  const lastColumn = (onlyTable ? columns.length : widths.length) - 1;
  const apart = beside && !onlyTable && !fitsAcross(widths, landscape);
  const pageStarts = apart ? [columns.length + 1] : asked;
  if (pageStarts.length === 0) return { landscape, pageStarts, tableAlone, lastColumn };
  const scale = scaleFor(widths.slice(0, lastColumn + 1), pageStarts, { landscape, repeats: tableAlone });
  return { landscape, pageStarts, tableAlone, lastColumn, scale };
}
