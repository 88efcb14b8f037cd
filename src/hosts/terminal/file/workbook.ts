import { fixedRangeOf, placeOf, rangeOf, type Block } from "../../../formula/addresses";
import { asksBole, withoutNames } from "../../../formula/names";
import { pointsOutside, referencesOf, type Reference } from "../../../formula/references";
import { outsideQuotes, rewritePlain } from "../../../formula/scan";
import { expandTables } from "../../../formula/tables";
import { asTyped, expandSpills } from "../../../formula/typed";
import { formulasIn } from "../../../xlsx/formulas";
import type { Held } from "../../../xlsx/held";
import type { Package } from "../../../xlsx/package";
import { readParts, type SheetPart, type WorkbookParts } from "../../../xlsx/parts";
import { Refused } from "../../../xlsx/refused";
import { serialOf } from "../../../xlsx/serial";
import type { SheetCell } from "../../../xlsx/sheet-cells";

/** A calculating cell of the file. */
export interface Formula {
  sheet: string;
  row: number;
  column: number;
  cell: SheetCell;
  /** As the file stores it, without the equals sign; a copied-down formula as it reads in this cell. */
  stored: string;
  /** As the engine reads it: no names, tables or prefixes. */
  forEngine: string;
  bole: boolean;
  cached: Held;
  /** The block that the file says its answer fills: one cell, unless it spills. */
  block: Block;
  /** Written as an array formula, whose answer may fill more than its cell. */
  array: boolean;
  /** Its block grows and shrinks with the answer, as Excel's newer array formulas do. */
  dynamic: boolean;
  references: Reference[];
  outside: ReturnType<typeof pointsOutside>;
}

export interface Sheet extends SheetPart {
  formulas: Formula[];
}

export interface Workbook extends WorkbookParts {
  /** When the values are taken: the hours of the clock on the wall, written as UTC. */
  at: Date;
  sheets: Sheet[];
}

/** More than any list of logs that one formula answers. */
const MOST_CELLS_FILLED = 1_000_000;

/** Reads what the file calculates: every sheet's cells, tables and names. */
export function readCalculating(file: Package, at: Date): Workbook {
  const parts = readParts(file);
  return { ...parts, at, sheets: parts.sheets.map((sheet) => ({ ...sheet, formulas: formulasOf(sheet, parts) })) };
}

function formulasOf(sheet: SheetPart, { tables, names, sheetNames }: WorkbookParts): Formula[] {
  return formulasIn(sheet.xml).map(({ cell, stored, fills, dynamic }) => {
    const { row, column } = cell;
    const block = fills ?? { top: row, left: column, bottom: row, right: column };
    if ((block.bottom - block.top + 1) * (block.right - block.left + 1) > MOST_CELLS_FILLED)
      throw new Refused(`a formula on its sheet ${sheet.name} fills ${rangeOf(block)}, more than is calculated here`);
    const plain = asTyped(withoutNames(stored, names, sheetNames, sheetNames.indexOf(sheet.name)));
    const forEngine = expandTables(plain, tables, { sheet: sheet.name, row, column });
    return {
      ...{ sheet: sheet.name, row, column, cell, cached: cell.value, stored, forEngine },
      ...{ block, array: fills !== undefined, dynamic },
      bole: asksBole(plain),
      references: referencesOf(forEngine, sheet.name),
      outside: pointsOutside(plain),
    };
  });
}

/** The same day has a number so much smaller in a workbook that counts its days from 1904. */
const DAYS_FROM_1900_TO_1904 = 1462;

/** Functions that take or give a day by its number, which the engine counts from 1900. */
const READS_DAYS =
  /(?<![\w.])(?:DATE|DATEVALUE|DATEDIF|DAY|DAYS360|EDATE|EOMONTH|ISOWEEKNUM|MONTH|NETWORKDAYS|TEXT|WEEKDAY|WEEKNUM|WORKDAY|YEAR|YEARFRAC)(?:\.INTL)?\(/i;

/** Whether a formula reckons with days in a way that the engine does not know for this workbook. */
export function misreadsDays({ forEngine }: Formula, { since1904 }: Pick<Workbook, "since1904">): boolean {
  return since1904 && READS_DAYS.test(outsideQuotes(forEngine));
}

/** The formula at one time of day: TODAY() and NOW() are that day and hour, and `D1#` is the block that D1 fills. */
export function formulaNow(
  formula: Formula,
  blocks: ReadonlyMap<string, Block>,
  { at, since1904 }: Pick<Workbook, "at" | "since1904">,
): string {
  const day = serialOf(at) - (since1904 ? DAYS_FROM_1900_TO_1904 : 0);
  const timed = rewritePlain(formula.forEngine, (plain) =>
    plain.replace(/(?<![\w.])TODAY\(\s*\)/gi, String(Math.floor(day))).replace(/(?<![\w.])NOW\(\s*\)/gi, String(day)),
  );
  if (!timed.includes("#")) return timed;
  return expandSpills(timed, (named, address) => {
    const { row, column } = placeOf(address);
    const block = blocks.get(keyOf(named ?? formula.sheet, row, column));
    return fixedRangeOf(block ?? { top: row, left: column, bottom: row, right: column });
  });
}

export function keyOf(sheet: string, row: number, column: number): string {
  return `${sheet.toLowerCase()}|${row}|${column}`;
}
