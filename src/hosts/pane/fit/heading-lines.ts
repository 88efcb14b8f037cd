import type { Block } from "../../../formula/addresses";
import type { SheetColumn } from "./block";
import { readHeading } from "./heading-read";
import { cellsOn, isData, oneLine, type SheetHere } from "./sheet-here";

/** The headings of a box, column by column, and the rows that they stand in. */
export interface HeadingLines {
  firstRow: number;
  headingRow: number;
  headings: Pick<SheetColumn, "heading" | "otherwise">[];
}

/** Headings in more lines than this were met nowhere. */
const MOST_LINES = 3;

/** What stands above the rows of a box; nothing where it begins with its rows. */
export function headingLines(box: Block, here: SheetHere): HeadingLines | undefined {
  const headingRow = lastLine(box, here);
  if (headingRow === undefined) return undefined;
  let firstRow = headingRow;
  while (firstRow > box.top && headingRow - firstRow + 1 < MOST_LINES && isLine(firstRow - 1, box, here)) firstRow -= 1;
  const { at } = cellsOn(here);
  const spans: string[] = Array.from({ length: headingRow - firstRow }, () => "");
  const headings: HeadingLines["headings"] = [];
  for (let column = box.left; column <= box.right; column++) {
    const lines: string[] = [];
    for (let row = firstRow; row <= headingRow; row++) lines.push(oneLine(at(row, column)));
    const last = lines.at(-1)!;
    // A word spans the columns behind it, Diameter over small and large; a unit alone does not.
    spans.forEach((before, line) => (spans[line] = lines[line] || (readHeading(before).unitAlone ? "" : before)));
    const heading = oneLine(lines.join(" "));
    const spanned = oneLine([...spans, last].join(" "));
    headings.push({ heading, otherwise: [...new Set([last, spanned])].filter((one) => one !== heading && one !== "") });
  }
  return { firstRow, headingRow, headings };
}

/**
 * The row of words that stands right above rows with numbers. Of several the fullest, for "Sawyer: Tom" may stand above the
 * headings too; where nothing is a number, the first row of words that has another below it.
 */
function lastLine(box: Block, here: SheetHere): number | undefined {
  const { filledIn } = cellsOn(here);
  const filled: number[] = [];
  for (let row = box.top; row <= box.bottom; row++) if (filledIn(row, box).length > 0) filled.push(row);
  const words = filled.filter((row, i) => i + 1 < filled.length && isWords(row, box, here));
  const aboveNumbers = words.filter((row) => filledIn(filled[filled.indexOf(row) + 1]!, box).some(isData));
  const candidates = aboveNumbers.length > 0 ? aboveNumbers : box.right > box.left ? words : [];
  const weight = (row: number) => {
    const cells = filledIn(row, box);
    return cells.length - 2 * cells.filter(asksForMore).length;
  };
  return candidates.reduce<number | undefined>(
    (best, row) => (best === undefined || weight(row) > weight(best) ? row : best),
    undefined,
  );
}

/** A row with words in it and no number; a few headings may begin with a digit, as 4/4 price does. */
function isWords(row: number, box: Block, here: SheetHere): boolean {
  const cells = cellsOn(here).filledIn(row, box);
  const isWide = box.right > box.left;
  const digits = cells.filter(isData).length;
  return (
    cells.length >= (isWide ? 2 : 1) && cells.every((cell) => typeof cell === "string") && digits * 3 <= cells.length
  );
}

/**
 * Whether a row above a line of the headings belongs to them: one value at the left edge is a title over the whole, and
 * "Sawyer:" asks for a name.
 */
function isLine(row: number, box: Block, here: SheetHere): boolean {
  const { filledIn, isFilled } = cellsOn(here);
  const cells = filledIn(row, box);
  if (cells.length === 0 || cells.some((cell) => isData(cell) || asksForMore(cell))) return false;
  return cells.length > 1 || !isFilled(row, box.left);
}

function asksForMore(cell: unknown): boolean {
  return typeof cell === "string" && /:\s*$/.test(cell);
}
