import type { CellAnswer, Engine, OpenedWorkbook } from "../../../engine/engine";
import { addressOf, type Block } from "../../../formula/addresses";
import type { Held } from "../../../xlsx/held";
import type { FileCell, FileSheet } from "../../../engine/workbook/read";
import { keyOf, formulaNow, type Formula, type Workbook } from "./workbook";

/** What the engine answers for a formula. */
export interface Result {
  formula: Formula;
  /** The cells that the answer fills from now on, row by row. */
  block: Block;
  values: CellAnswer[][];
}

/** Errors by which the engine says that it could not calculate, not that the answer is an error. */
const NO_ANSWER = ["#NAME?", "#ERROR!", "#CYCLE!", "#SPILL!", "#CALC!", "#CONNECT!", "#BLOCKED!"];

/** A block that changes size moves what leans on it, so the engine is asked again until nothing moves. */
const MOST_ROUNDS = 6;

/** Why some formulas keep the value that the file holds. */
export type Reasons = Map<Formula, string>;

/**
 * Asks the engine for some formulas; every other formula counts as the value that the file holds. A formula that the
 * engine turns out not to calculate joins those, with the reason, so that what leans on it sees the file's value too.
 */
export async function calculate(
  workbook: Workbook,
  wanted: readonly Formula[],
  unable: Reasons,
  engine: Engine,
): Promise<Result[]> {
  const blocks = new Map(workbook.sheets.flatMap(({ formulas }) => formulas.map((one) => [key(one), one.block])));
  for (let round = 1; ; round++) {
    const asked = wanted.filter((formula) => !unable.has(formula));
    const opened = await engine.calculate({ names: [], sheets: sheetsFor(workbook, new Set(asked), unable, blocks) });
    const filled = filledBlocks(opened);
    let settled = true;
    for (const formula of asked) {
      const answer = opened.value(formula.sheet, addressOf(formula.row, formula.column));
      const block = filled.get(key(formula)) ?? cellOf(formula);
      const fault = faultOf(formula, answer, block);
      if (fault) unable.set(formula, fault);
      const moved = !fault && formula.dynamic && !same(block, blocks.get(key(formula))!);
      if (moved) blocks.set(key(formula), block);
      if (fault || moved) settled = false;
    }
    if (settled || round === MOST_ROUNDS)
      return asked.filter((one) => !unable.has(one)).map((formula) => resultOf(formula, opened, filled));
  }
}

function faultOf(formula: Formula, answer: CellAnswer, block: Block): string | undefined {
  const error = typeof answer === "object" ? answer.error : "";
  if (error === "#SPILL!") return "its answer needs more free cells than there are";
  if (NO_ANSWER.includes(error)) return "the engine cannot calculate it";
  if (!formula.array && !same(block, cellOf(formula)))
    return "it answers with several cells, but is not an array formula";
  return undefined;
}

function resultOf(formula: Formula, opened: OpenedWorkbook, filled: ReadonlyMap<string, Block>): Result {
  const answered = filled.get(key(formula)) ?? cellOf(formula);
  const block = formula.dynamic ? answered : formula.array ? formula.block : cellOf(formula);
  const single = same(answered, cellOf(formula));
  const at = (row: number, column: number): CellAnswer => {
    if (single) return opened.value(formula.sheet, addressOf(formula.row, formula.column));
    if (row > answered.bottom || column > answered.right) return { error: "#N/A" };
    return opened.value(formula.sheet, addressOf(row, column));
  };
  const values = range(block.top, block.bottom).map((row) =>
    range(block.left, block.right).map((column) => at(row, column)),
  );
  return { formula, block, values };
}

/** The cells as the engine takes them: the formulas asked for, and values for all the rest. */
function sheetsFor(
  workbook: Workbook,
  asked: ReadonlySet<Formula>,
  unable: Reasons,
  blocks: ReadonlyMap<string, Block>,
): FileSheet[] {
  return workbook.sheets.map(({ name, xml, formulas }) => {
    const own = formulas.filter((formula) => asked.has(formula));
    const answers = new Set(
      own.flatMap((formula) => cellsIn(formula.block).map(({ row, column }) => keyOf(name, row, column))),
    );
    // No value in the file and none from the engine: what leans on it must not take it for 0.
    const unknown = formulas.filter((formula) => formula.cached === null && unable.has(formula));
    const missing = unknown.map(({ row, column }): FileCell => ({ row, column, value: "#N/A" }));
    const values = xml.rows.flatMap(({ cells }) =>
      cells.flatMap(({ row, column, value }): FileCell[] =>
        value === null || answers.has(keyOf(name, row, column)) ? [] : [{ row, column, value }],
      ),
    );
    const calculating = own.map((formula): FileCell => {
      const { row, column, stored, array, block } = formula;
      const text = formulaNow(formula, blocks, workbook);
      // Without the file's value, so that what is read afterwards can only be the engine's.
      return { row, column, value: null, stored, formula: text, ...(array ? { spill: block } : {}) };
    });
    return { name, cells: [...values, ...missing, ...calculating] };
  });
}

function filledBlocks(opened: OpenedWorkbook): Map<string, Block> {
  const blocks = new Map<string, Block>();
  for (const { sheet, address, filled } of opened.formulaCells())
    if (filled) blocks.set(`${sheet.toLowerCase()}|${address}`, filled);
  return new Map(
    [...blocks].map(([name, block]) => [`${name.slice(0, name.lastIndexOf("|"))}|${block.top}|${block.left}`, block]),
  );
}

export function cellOf({ row, column }: { row: number; column: number }): Block {
  return { top: row, left: column, bottom: row, right: column };
}

export function cellsIn({ top, left, bottom, right }: Block): { row: number; column: number }[] {
  return range(top, bottom).flatMap((row) => range(left, right).map((column) => ({ row, column })));
}

export function same(one: Block, other: Block): boolean {
  return one.top === other.top && one.left === other.left && one.bottom === other.bottom && one.right === other.right;
}

/** The engine's answer as a cell holds it. */
export function heldOf(answer: CellAnswer): Held {
  return typeof answer === "object" ? answer.error : answer;
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, at) => from + at);
}

function key({ sheet, row, column }: Formula): string {
  return keyOf(sheet, row, column);
}
