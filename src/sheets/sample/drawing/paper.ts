import type { Print, Sheet } from "../../../xlsx/write/book";

/** Letter and A4, by their shorter and longer side: a sheet must go onto either. Inches. */
const PAPERS = [
  { short: 8.5, long: 11 },
  { short: 8.27, long: 11.69 },
];
export const MARGINS_IN = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6 } as const;

/** A column is so many pixels a character and some between columns, 96 to the inch (the spreadsheet's usual font). */
const [PIXELS_PER_CHARACTER, PIXELS_BETWEEN, PIXELS_PER_INCH] = [7, 5, 96];
const USUAL_CHARACTERS = 9;

/** What a page holds beside the margins, in inches, whichever paper lies in the printer. */
export function printableInches({ landscape }: Pick<Print, "landscape">): { width: number; height: number } {
  const across = PAPERS.map(({ short, long }) => (landscape ? long : short));
  const down = PAPERS.map(({ short, long }) => (landscape ? short : long));
  return {
    width: Math.min(...across) - MARGINS_IN.left - MARGINS_IN.right,
    height: Math.min(...down) - MARGINS_IN.top - MARGINS_IN.bottom,
  };
}

/** Programs and printers differ a little in what a column takes; a page too narrow by a hair prints a column alone. */
const SLACK = 0.97;

/** The width of columns on screen, in inches, the last one included. */
export function inchesAcross({ widths }: Sheet, first: number, last: number): number {
  let pixels = 0;
  for (let at = first; at <= last; at++)
    pixels += (widths[at] || USUAL_CHARACTERS) * PIXELS_PER_CHARACTER + PIXELS_BETWEEN;
  return pixels / PIXELS_PER_INCH;
}

/** Begins another page at each of some columns, counted from 0, and prints the first column again on it if that names the rows. */
export function pagesAcross(sheet: Sheet, starts: readonly number[], namesRows = true): void {
  if (starts.length === 0) return;
  const { print, widths } = sheet;
  const { width } = printableInches(print);
  const firsts = [0, ...starts];
  const needed = firsts.map((first, i) => {
    const own = inchesAcross(sheet, first, (firsts[i + 1] ?? widths.length) - 1);
    return first > 0 && namesRows ? own + inchesAcross(sheet, 0, 0) : own;
  });
  print.scale = Math.min(100, Math.floor((SLACK * 100 * width) / Math.max(...needed)));
  print.columnBreaks = [...starts];
  if (namesRows) print.repeatedColumns = { first: 0, last: 0 };
}
