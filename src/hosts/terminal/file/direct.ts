import { ask } from "../../../engine/ask";
import { isBoleError } from "../../../engine/messages";
import type { CellAnswer } from "../../../engine/engine";
import { ADD_IN } from "../../../catalog/about/add-in";
import { registry } from "../../../functions/registry";
import { cellsIn, LAST_COLUMN, LAST_ROW, type Block } from "../../../formula/addresses";
import { plainCall, type PlainCall } from "../../../formula/call";
import type { Reference } from "../../../formula/references";
import { cellsWithin } from "../../../xlsx/find-cells";
import type { Held } from "../../../xlsx/held";
import { keyOf, type Formula, type Workbook } from "./workbook";

/** The answer of a formula, row by row. */
export type Answers = Map<Formula, CellAnswer[][]>;

/** A range of more cells is left to the engine, which knows how much of a whole column is in use. */
const MOST_CELLS_GIVEN = 200_000;

/**
 * Answers the formulas that are one call of ours and whose arguments are cells, ranges or values, without the engine:
 * what they cost is what they calculate. A formula that leans on one that the engine must calculate is left to it too.
 * `asked` are all formulas whose values are wanted afresh; `texts` is how they read now.
 */
export function answerDirectly(
  workbook: Workbook,
  asked: readonly Formula[],
  unknown: ReadonlySet<Formula>,
  texts: ReadonlyMap<Formula, string>,
): Answers {
  const byPlace = new Map<string, Formula>();
  for (const formula of asked)
    for (let row = formula.block.top; row <= formula.block.bottom; row++)
      for (let column = formula.block.left; column <= formula.block.right; column++)
        byPlace.set(keyOf(formula.sheet, row, column), formula);
  const missing = new Set([...unknown].map(({ sheet, row, column }) => keyOf(sheet, row, column)));
  const sheets = new Map(workbook.sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const answers: Answers = new Map();
  const known = { byPlace, missing, sheets, answers };
  const calls = new Map(asked.map((formula) => [formula, callIn(texts.get(formula)!, formula, sheets)]));
  for (const formula of asked) answerWithInputs(formula, calls, known);
  return answers;
}

interface Known {
  byPlace: ReadonlyMap<string, Formula>;
  missing: ReadonlySet<string>;
  sheets: ReadonlyMap<string, Workbook["sheets"][number]>;
  answers: Answers;
}

type Calls = Map<Formula, PlainCall | undefined>;

/** Answers a formula after those it leans on, however long the chain is; one that leans on itself is nobody's. */
function answerWithInputs(start: Formula, calls: Calls, known: Known): void {
  const open = [start];
  const begun = new Set<Formula>();
  while (open.length > 0) {
    const formula = open.at(-1)!;
    const call = calls.get(formula);
    if (!call || known.answers.has(formula)) {
      open.pop();
      continue;
    }
    const inputs = inputsOf(call, known);
    const unanswered = inputs.filter((input) => !known.answers.has(input));
    if (unanswered.length === 0) known.answers.set(formula, answerOf(call, known));
    else if (begun.has(formula) || unanswered.some((input) => !calls.get(input) || begun.has(input)))
      calls.set(formula, undefined);
    else {
      begun.add(formula);
      open.push(...unanswered);
      continue;
    }
    open.pop();
  }
}

function callIn(text: string, formula: Formula, sheets: Known["sheets"]): PlainCall | undefined {
  if (!formula.bole || formula.block.bottom > LAST_ROW || formula.block.right > LAST_COLUMN) return undefined;
  const call = plainCall(text, formula.sheet);
  if (!call?.name.startsWith(`${ADD_IN}.`) || !registry[call.name.slice(ADD_IN.length + 1)]) return undefined;
  const isReadable = (reference: Reference) =>
    cellsIn(reference.block) <= MOST_CELLS_GIVEN && sheets.has(reference.sheet.toLowerCase());
  return call.given.every((one) => !one || !("cells" in one) || isReadable(one.cells)) ? call : undefined;
}

/** The formulas that answer in the cells that a call is given. */
function inputsOf({ given }: PlainCall, { byPlace }: Known): Formula[] {
  const found = new Set<Formula>();
  for (const one of given)
    if (one && "cells" in one)
      eachPlace(one.cells.block, (row, column) => {
        const formula = byPlace.get(keyOf(one.cells.sheet, row, column));
        if (formula) found.add(formula);
      });
  return [...found];
}

function eachPlace({ top, left, bottom, right }: Block, visit: (row: number, column: number) => void): void {
  for (let row = top; row <= bottom; row++) for (let column = left; column <= right; column++) visit(row, column);
}

function answerOf({ name, given }: PlainCall, known: Known): CellAnswer[][] {
  const cells = given.map((one) => (!one ? [[null]] : "values" in one ? one.values : cellsGiven(one.cells, known)));
  return ask(name, registry[name.slice(ADD_IN.length + 1)]!, cells) as CellAnswer[][];
}

/** The cells of a range as a function gets them: a blank is 0, an error its text. */
function cellsGiven({ sheet, block }: Reference, { byPlace, missing, sheets, answers }: Known): unknown[][] {
  const cells = Array.from({ length: block.bottom - block.top + 1 }, () =>
    new Array<unknown>(block.right - block.left + 1).fill(0),
  );
  for (const { row, column, value } of cellsWithin(sheets.get(sheet.toLowerCase())!.xml, block))
    cells[row - block.top]![column - block.left] = asGiven(value);
  eachPlace(block, (row, column) => {
    const key = keyOf(sheet, row, column);
    const formula = byPlace.get(key);
    if (formula) {
      const answer = answers.get(formula)?.[row - formula.row]?.[column - formula.column] ?? null;
      cells[row - block.top]![column - block.left] = isBoleError(answer) ? answer.error : asGiven(answer as Held);
    } else if (missing.has(key)) cells[row - block.top]![column - block.left] = "#N/A";
  });
  return cells;
}

/** A text without a letter is a blank to the engine. */
function asGiven(value: Held): unknown {
  return value === null || value === "" ? 0 : value;
}
