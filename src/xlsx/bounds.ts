import { Refused } from "./refused";
import { blockOf, LAST_COLUMN, LAST_ROW } from "../formula/addresses";

const MOST_ROWS = LAST_ROW + 1;
const MOST_COLUMNS = LAST_COLUMN + 1;

/** The reading library keeps an entry for each merged cell; a person merges headings, not sheets. */
const MOST_MERGED_CELLS = 200_000;

/**
 * Refuses a sheet that would take the reading library hours: a few letters of a file can name billions of rows, columns
 * or merged cells.
 */
export function mustBeASheet(xml: string, part: string): void {
  for (const [, row] of xml.matchAll(/<(?:row|c)\b[^>]*?\br\s*=\s*["'][A-Za-z]*(\d+)["']/g))
    if (Number(row) > MOST_ROWS) throw new Refused(`its part ${part} names row ${row}; a sheet has ${MOST_ROWS}`);
  for (const [, column] of xml.matchAll(/<col\b[^>]*?\bmax\s*=\s*["'](\d+)["']/g))
    if (Number(column) > MOST_COLUMNS)
      throw new Refused(`its part ${part} names column ${column}; a sheet has ${MOST_COLUMNS}`);
  let merged = 0;
  for (const [, area = ""] of xml.matchAll(/<mergeCell\b[^>]*?\bref\s*=\s*["']([^"']*)["']/g)) merged += cellsIn(area);
  if (merged > MOST_MERGED_CELLS)
    throw new Refused(`its part ${part} merges ${merged} cells; the limit is ${MOST_MERGED_CELLS}`);
}

function cellsIn(area: string): number {
  const { top, left, bottom, right } = blockOf(area);
  return (bottom - top + 1) * (right - left + 1);
}
