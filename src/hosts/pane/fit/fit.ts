import type { Entry, Param } from "../../../catalog/entry";
import { registry, type WorksheetFunction } from "../../../functions/registry";
import type { HeadedBlock, SheetColumn } from "./block";
import { readHeading } from "./heading-read";
import { isBlankCell } from "./sheet-here";
import { readIn, unitSaid, withUnit, type UnitSaid } from "./unit-said";
import { sayingOf, wordWeight } from "./word-weight";

/** A column as an argument would read it. */
export interface Fitting {
  column: SheetColumn;
  said: UnitSaid;
  weight: number;
}

/** What was found for an argument: the column that fits; several that fit alike; or none. */
export interface Fitted {
  param: Param;
  found?: Fitting;
  alike: readonly Fitting[];
}

/** Cells that are plenty to tell what a column holds. */
const MOST_READ = 60;

/** A column fits from here on; one that may be left out only where its heading says so. */
const ENOUGH = 3;
const ENOUGH_TO_BE_ADDED = 5;

/** Words alone in a column, nearly all of them known for that argument, count as much as a heading that may mean it. */
const KNOWN_WORDS = 4;
const NEARLY_ALL = 0.9;

const MONEY_SIGN = /[$€£]/;

/** What a heading says only in part is worth so much less. */
const FOR_A_PART = 1.5;

/** Weights nearer than this are alike: the person chooses. */
const HAIR = 0.01;

/** Whether a function answers for each row of a sheet: not with a table of its own, and not about Bole itself. */
export function answersForRows(entry: Entry): boolean {
  return entry.topic !== "about" && !/^(?:a |the )?table\b/i.test(entry.returns) && rowParams(entry).length > 0;
}

/** The arguments that take a value of each row; the others read a whole range and are typed. */
export function rowParams(entry: Entry): Param[] {
  return entry.params.filter(({ many }) => many === undefined);
}

/** The column of a block that fits each argument of a function, by heading and content. No column is offered twice. */
export function fitted(entry: Entry, block: HeadedBlock): Fitted[] {
  const params = rowParams(entry);
  const fittings = params.map((param) => {
    const enough = param.optional ? ENOUGH_TO_BE_ADDED : ENOUGH;
    return block.columns
      .map((column) => fitting(entry, param, column))
      .filter((one): one is Fitting => one !== undefined && one.weight >= enough);
  });
  const taken = new Set<SheetColumn>();
  const chosen = new Map<number, Fitting>();
  const pairs = fittings.flatMap((ones, at) => ones.map((one) => ({ one, at })));
  for (const { one, at } of pairs.sort((a, b) => b.one.weight - a.one.weight)) {
    if (chosen.has(at) || taken.has(one.column)) continue;
    chosen.set(at, one);
    taken.add(one.column);
  }
  return twinsInOrder(params.map((param, at) => fitOf(param, at)));

  function fitOf(param: Param, at: number): Fitted {
    const found = chosen.get(at);
    const rivals = fittings[at]!.filter((one) => found && Math.abs(one.weight - found.weight) < HAIR);
    const alike = rivals.filter((one) => one === found || !taken.has(one.column) || isShared(one, at));
    return alike.length > 1 ? { param, alike } : { param, alike: [], ...(found && { found }) };
  }

  /** Whether a column went to another argument that it fits no better than this one: the two cannot be told apart. */
  function isShared({ column, weight }: Fitting, at: number): boolean {
    const other = [...chosen].find(([place, one]) => place !== at && one.column === column);
    return other !== undefined && Math.abs(other[1].weight - weight) < HAIR;
  }
}

/** pulley1 and pulley2 ask for two of a kind: where just as many columns fit alike, each takes the next one. */
function twinsInOrder(fits: readonly Fitted[]): Fitted[] {
  const stem = ({ param }: Fitted) => /^(.*?)\d+$/.exec(param.name)?.[1];
  return fits.map((fit) => {
    const twins = stem(fit) === undefined ? [] : fits.filter((other) => stem(other) === stem(fit));
    const found = fit.alike[twins.indexOf(fit)];
    return found && twins.every(({ alike }) => alike.length === twins.length) ? { ...fit, found, alike: [] } : fit;
  });
}

/** How a column is read for an argument, and how well it fits; nothing where it cannot be read for it. */
export function fitting(entry: Entry, param: Param, column: SheetColumn): Fitting | undefined {
  const argument = argumentOf(entry, param);
  const readings = [column.heading, ...column.otherwise].map(readHeading);
  const unit = readings.find((one) => one.unit !== undefined)?.unit;
  const said = unitSaid(argument, `${param.text} ${param.name}`, unit, column.cells);
  if (!said) return undefined;
  const filled = column.cells.filter((cell) => !isBlankCell(cell)).slice(0, MOST_READ);
  const readable = filled.filter((cell) => readIn(argument, withUnit(cell, said)) !== undefined).length;
  if (filled.length > 0 && readable === 0) return undefined;
  const share = filled.length === 0 ? 0 : readable / filled.length;
  const others = new Set(entry.params.filter((other) => other !== param).map(({ name }) => name));
  const byWords = weightOfAll(readings.map((reading) => wordWeight(sayingOf(param), reading, others)));
  const byUnit = readings[0]!.unitAlone && unit !== undefined && said.how === "none" && param.kind !== "word" ? 4 : 0;
  const byContent = param.kind === "word" && filled.length > 0 && share >= NEARLY_ALL ? KNOWN_WORDS : 0;
  const isMoney = MONEY_SIGN.test(column.heading) && param.kind !== "money";
  const best = isMoney ? -1 : byWords < 0 ? byWords : Math.max(byWords, byUnit, byContent);
  return { column, said, weight: best <= 0 ? best : best + share + (unit === undefined ? 0 : 0.5) };
}

export function argumentOf(entry: Entry, { name }: Param): WorksheetFunction["takes"][number] {
  return registry[entry.name]!.takes.find((argument) => argument.name === name)!;
}

/** A heading counts whole; a part of it, or what spans it, a little less. One that means another thing settles it. */
function weightOfAll([whole = 0, ...otherwise]: readonly number[]): number {
  if (whole < 0 || otherwise.some((weight) => weight < 0)) return -1;
  return Math.max(whole, ...otherwise.map((weight) => weight - FOR_A_PART));
}
