import { ADD_IN } from "../../../catalog/about/add-in";
import { blockAt, cellsIn, fixedRangeOf, rangeOf, type Block } from "../../../formula/addresses";
import { functionsIn, functionsOf, inCapitals, withCalls } from "../../../formula/functions";
import { withoutNames, type WithoutNames } from "../../../formula/names";
import { pointsOutside, referencesIn, searchesCellsIn, type Reference } from "../../../formula/references";
import { expandTables } from "../../../formula/tables";
import { tokensOf } from "../../../formula/tokens";
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
  /** The functions that it calls, each once. */
  calls: string[];
  /** Whether it finds its cells only while it calculates. */
  searches: boolean;
  outside: ReturnType<typeof pointsOutside>;
}

export interface Sheet extends SheetPart {
  formulas: Formula[];
}

export interface Workbook extends WorkbookParts {
  /** When the values are taken: the hours of the clock on the wall, written as UTC. */
  at: Date;
  sheets: Sheet[];
  /** A formula with what its names stand for. */
  meant: WithoutNames;
}

/** More than any list of logs that one formula answers. */
const MOST_CELLS_FILLED = 1_000_000;

/** Reads what the file calculates: every sheet's cells, tables and names. */
export function readCalculating(file: Package, at: Date): Workbook {
  const parts = readParts(file);
  const meant = withoutNames(parts.names, parts.sheetNames);
  const sheets = parts.sheets.map((sheet) => ({ ...sheet, formulas: formulasOf(sheet, parts, meant) }));
  return { ...parts, at, sheets, meant };
}

function formulasOf(sheet: SheetPart, { tables, sheetNames }: WorkbookParts, meant: WithoutNames): Formula[] {
  const number = sheetNames.indexOf(sheet.name);
  return formulasIn(sheet.xml).map(({ cell, stored, fills, dynamic }) => {
    const { row, column } = cell;
    const block = fills ?? blockAt({ row, column });
    if (cellsIn(block) > MOST_CELLS_FILLED)
      throw new Refused(`a formula on its sheet ${sheet.name} fills ${rangeOf(block)}, more than is calculated here`);
    const plain = asTyped(meant(stored, number));
    const forEngine = expandTables(plain, tables, { sheet: sheet.name, row, column });
    const tokens = tokensOf(forEngine);
    return {
      ...{ sheet: sheet.name, row, column, cell, cached: cell.value, stored, forEngine },
      ...{ block, array: fills !== undefined, dynamic },
      bole: asksBole(plain),
      references: referencesIn(tokens, sheet.name),
      calls: [...new Set(functionsIn(tokens))],
      searches: searchesCellsIn(tokens),
      outside: pointsOutside(plain),
    };
  });
}

/** The same day has a number so much smaller in a workbook that counts its days from 1904. */
const DAYS_FROM_1900_TO_1904 = 1462;

/** Functions that take or give a day by its number, which the engine counts from 1900. */
const READS_DAYS =
  /^(?:DATE|DATEVALUE|DATEDIF|DAY|DAYS360|EDATE|EOMONTH|ISOWEEKNUM|MONTH|NETWORKDAYS|TEXT|WEEKDAY|WEEKNUM|WORKDAY|YEAR|YEARFRAC)(?:\.INTL)?$/;

/** Whether a formula reckons with days in a way that the engine does not know for this workbook. */
export function misreadsDays({ calls }: Formula, { since1904 }: Pick<Workbook, "since1904">): boolean {
  return since1904 && calls.some((name) => READS_DAYS.test(name));
}

/** The formula at one time of day: TODAY() and NOW() are that day and hour, and `D1#` is the block that D1 fills. */
export function formulaNow(
  formula: Formula,
  blocks: ReadonlyMap<string, Block>,
  { at, since1904 }: Pick<Workbook, "at" | "since1904">,
): string {
  const day = serialOf(at) - (since1904 ? DAYS_FROM_1900_TO_1904 : 0);
  const timed = atTime(formula.forEngine, day);
  if (!timed.includes("#")) return timed;
  return expandSpills(timed, (named, row, column) =>
    fixedRangeOf(blocks.get(keyOf(named ?? formula.sheet, row, column)) ?? blockAt({ row, column })),
  );
}

/** TODAY() and NOW() as the numbers that they answer at that time. */
function atTime(formula: string, day: number): string {
  if (!/TODAY|NOW/i.test(formula)) return formula;
  return withCalls(formula, (name, inside) => {
    if (!/^(?:TODAY|NOW)$/i.test(name) || inside.some(({ kind }) => kind !== "space")) return undefined;
    return String(/^NOW$/i.test(name) ? day : Math.floor(day));
  });
}

/** A formula that asks one of our functions, typed or stored. */
export function asksBole(formula: string): boolean {
  return functionsOf(ADD_IN, formula).length > 0;
}

/** A formula from the file as our pages write it. */
export function asShown(stored: string): string {
  return inCapitals(ADD_IN, asTyped(stored));
}

export function keyOf(sheet: string, row: number, column: number): string {
  return `${sheet.toLowerCase()}|${row}|${column}`;
}
