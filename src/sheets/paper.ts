/** Letter and A4, by their shorter and longer side: a sheet must go onto either. Inches. */
const PAPERS = [
  { short: 8.5, long: 11 },
  { short: 8.27, long: 11.69 },
];
export const MARGINS_IN = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6 } as const;
/** Where the line at the foot of a page stands, from the edge of the paper. Inches. */
export const FOOTER_IN = 0.3;

/** A column is so many pixels a character and some between columns, 96 to the inch (the spreadsheet's usual font). */
const [PIXELS_PER_CHARACTER, PIXELS_BETWEEN, PIXELS_PER_INCH] = [7, 5, 96];
const USUAL_CHARACTERS = 9;

/** Programs and printers differ a little in what a column takes; a page too narrow by a hair prints a column alone. */
const SLACK = 0.97;

/** The smallest type of our sheets, and the smallest that can be read on paper. Points. */
const SMALLEST_ON_SCREEN = 10;
const SMALLEST_ON_PAPER = 8;

/** What a page holds beside the margins, in inches, whichever paper lies in the printer. */
export function printableInches({ landscape }: { landscape: boolean }): { width: number; height: number } {
  const across = PAPERS.map(({ short, long }) => (landscape ? long : short));
  const down = PAPERS.map(({ short, long }) => (landscape ? short : long));
  return {
    width: Math.min(...across) - MARGINS_IN.left - MARGINS_IN.right,
    height: Math.min(...down) - MARGINS_IN.top - MARGINS_IN.bottom,
  };
}

/** The width of columns on screen, in inches, the last one included; widths are given in characters. */
export function inchesAcross(widths: readonly number[], first: number, last: number): number {
  let pixels = 0;
  for (let at = first; at <= last; at++)
    pixels += (widths[at] || USUAL_CHARACTERS) * PIXELS_PER_CHARACTER + PIXELS_BETWEEN;
  return pixels / PIXELS_PER_INCH;
}

/**
 * How large a sheet is printed, in percent, so that each page across holds its columns. Pages begin at the first column
 * and at `starts`, counted from 0; `repeats` says that the first column is printed again on each.
 */
export function scaleFor(
  widths: readonly number[],
  starts: readonly number[],
  { landscape, repeats }: { landscape: boolean; repeats: boolean },
): number {
  const firsts = [0, ...starts];
  const needed = firsts.map((first, i) => {
    const own = inchesAcross(widths, first, (firsts[i + 1] ?? widths.length) - 1);
    return first > 0 && repeats ? own + inchesAcross(widths, 0, 0) : own;
  });
  return Math.min(100, Math.floor((SLACK * 100 * printableInches({ landscape }).width) / Math.max(...needed)));
}

/** Whether all columns go onto one page across in type that can be read. */
export function fitsAcross(widths: readonly number[], landscape: boolean): boolean {
  return scaleFor(widths, [], { landscape, repeats: false }) * SMALLEST_ON_SCREEN >= 100 * SMALLEST_ON_PAPER;
}
