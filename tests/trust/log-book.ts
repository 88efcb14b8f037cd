import { lineAmount } from "../../src/math/money/cents";
import { logScaleBoardFeet } from "../../src/math/logs/log-scale";
import { logWeightLb } from "../../src/math/wood/weight";
import { blockOf } from "../../src/formula/addresses";
import { cellIn, newSheet, type Sheet } from "../../src/xlsx/write/book";
import { writeBook } from "../../src/xlsx/write/write-book";

/** An invented log book of any length, with its scale, weight and price by the bare formulas: what no host may lose. */
export interface LogRow {
  species: (typeof SPECIES)[number] | null;
  smallIn: number | string | null;
  largeIn: number | null;
  lengthFt: number | null;
}

export type Figures = readonly [scale: number | string, weight: number | string, price: number | string];

const SPECIES = ["black walnut", "northern red oak", "white oak", "sugar maple", "western hemlock"] as const;
export const PRICE_PER_FOOT = 3.25;

/** Every 997th row is blank and every 1,009th cannot be read, as happens in a book that a person keeps. */
const BLANK_EVERY = 997;
const UNREADABLE_EVERY = 1009;

export function logRow(at: number): LogRow {
  if (at % BLANK_EVERY === BLANK_EVERY - 1) return { species: null, smallIn: null, largeIn: null, lengthFt: null };
  const smallIn = 8 + ((at * 7) % 520) / 10;
  return {
    species: SPECIES[at % SPECIES.length]!,
    smallIn: at % UNREADABLE_EVERY === UNREADABLE_EVERY - 1 ? "a fair one" : smallIn,
    largeIn: smallIn + 1 + (at % 11) / 2,
    lengthFt: 8 + (at % 17) / 2,
  };
}

/** What the row's three formulas must answer. */
export function figuresOf({ species, smallIn, largeIn, lengthFt }: LogRow): Figures {
  if (species === null || largeIn === null || lengthFt === null) return [0, 0, 0];
  if (typeof smallIn !== "number") return ["#VALUE!", "#VALUE!", "#VALUE!"];
  const scale = logScaleBoardFeet({ diameterIn: smallIn, lengthFt, rule: "Doyle", rounding: "none" });
  const weight = logWeightLb({ species, smallIn, largeIn, lengthFt, bark: "without", bound: "typical" });
  return [scale, weight, lineAmount({ quantity: scale, price: PRICE_PER_FOOT })];
}

/** The formulas of a row in columns E to G, as a workbook stores them. */
function formulasOf(row: number): string[] {
  return [
    `_xldudf_BOLE_LOGSCALE(B${row},D${row},"Doyle")`,
    `_xldudf_BOLE_LOGWEIGHT(A${row},B${row},C${row},D${row})`,
    // A blank row: a price without a quantity is refused, so it is asked first, as in any log book.
    `IF(E${row}=0,0,_xldudf_BOLE_LINEAMOUNT(E${row},${PRICE_PER_FOOT}))`,
  ];
}

export const SHEET = "Log book";
export const FORMULAS_A_ROW = 3;
/** Columns of the three figures, and the column of the spilled scale. */
export const FIGURE_COLUMNS = ["E", "F", "G"] as const;
export const SPILLED_COLUMN = "I";

/** The log book as a file, three formulas a row; every stored value is wrong, so that only a calculation is right. */
export function logBook(rows: number): Uint8Array {
  return written(rows, (sheet) => {
    for (let row = 1; row <= rows; row++)
      for (const [at, formula] of formulasOf(row).entries())
        cellIn(sheet, { row: row - 1, column: 4 + at }).content = { formula, result: -1 };
  });
}

/** The same logs with the scale of all of them as one formula that spills. */
export function spilledLogBook(rows: number): Uint8Array {
  return written(rows, (sheet) => {
    cellIn(sheet, `${SPILLED_COLUMN}1`).content = {
      formula: `_xldudf_BOLE_LOGSCALE(B1:B${rows},D1:D${rows},"Doyle")`,
      result: -1,
      fills: blockOf(`${SPILLED_COLUMN}1:${SPILLED_COLUMN}${rows}`),
    };
  });
}

function written(rows: number, withFormulas: (sheet: Sheet) => void): Uint8Array {
  const sheet = newSheet(SHEET, { landscape: true, onePage: false, footer: "" });
  for (let row = 0; row < rows; row++) {
    const { species, smallIn, largeIn, lengthFt } = logRow(row);
    for (const [column, content] of [species, smallIn, largeIn, lengthFt].entries())
      if (content !== null) cellIn(sheet, { row, column }).content = content;
  }
  withFormulas(sheet);
  return bookOf(sheet);
}

/** A workbook of one sheet. */
export function bookOf(sheet: Sheet): Uint8Array {
  return writeBook({ title: "Logs", author: "", at: new Date("2026-01-01T00:00:00Z"), sheets: [sheet], names: [] }, {});
}

/** What is wrong with the figures of the rows, the first few in words. `isSame` says how near is near enough. */
export function wrongFigures(
  rows: number,
  figures: number,
  figureAt: (row: number, figure: number) => unknown,
  isSame: (got: unknown, wanted: number | string) => boolean = isTheSame,
): string[] {
  const wrong: string[] = [];
  for (let at = 0; at < rows; at++) {
    const wanted = figuresOf(logRow(at)).slice(0, figures);
    for (const [figure, right] of wanted.entries()) {
      const got = figureAt(at, figure);
      if (!isSame(got, right) && wrong.length < 5)
        wrong.push(`row ${at + 1}, figure ${figure + 1}: wanted ${right}, got ${JSON.stringify(got)}`);
    }
  }
  return wrong;
}

/** The same to the last bit, an error by its name. */
function isTheSame(got: unknown, wanted: number | string): boolean {
  return nameOrValue(got) === wanted;
}

/** The try-out engine cuts off what looks like the accident of binary, from the twelfth digit on. */
export function isTheSameTo12Digits(got: unknown, wanted: number | string): boolean {
  if (typeof wanted === "string" || typeof got !== "number") return isTheSame(got, wanted);
  return Math.abs(got - wanted) <= 1e-12 * Math.abs(wanted);
}

function nameOrValue(got: unknown): unknown {
  if (typeof got !== "object" || got === null) return got;
  return "error" in got ? got.error : "basicValue" in got ? got.basicValue : got;
}
