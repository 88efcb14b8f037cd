import type { CellAnswer, Engine } from "../../../engine/engine";
import { blockAt, LAST_COLUMN, LAST_ROW, type Block } from "../../../formula/addresses";
import { cellsWithin } from "../../../xlsx/find-cells";
import type { Held } from "../../../xlsx/held";
import { mergesOf } from "../../../xlsx/layout";
import { answerDirectly, type Answers } from "./direct";
import { answerInEngine } from "./in-engine";
import { keyOf, formulaNow, type Formula, type Workbook } from "./workbook";

/** What is answered for a formula. */
export interface Result {
  formula: Formula;
  /** The cells that the answer fills from now on, row by row. */
  block: Block;
  values: CellAnswer[][];
}

/** Errors by which the engine says that it could not calculate, not that the answer is an error. */
const NO_ANSWER = ["#NAME?", "#ERROR!", "#CYCLE!", "#SPILL!", "#CALC!", "#CONNECT!", "#BLOCKED!"];

/** A block that changes size moves what leans on it, so everything is asked again until nothing moves. */
const MOST_ROUNDS = 6;

/** Why some formulas keep the value that the file holds. */
export type Reasons = Map<Formula, string>;

/**
 * Calculates some formulas; every other one counts as the value that the file holds. A formula that turns out not to be
 * calculated joins those, with the reason, so that what leans on it sees the file's value too.
 */
export async function calculate(
  workbook: Workbook,
  wanted: readonly Formula[],
  unable: Reasons,
  engine: Engine,
): Promise<Result[]> {
  const arrays = workbook.sheets.flatMap(({ formulas }) => formulas.filter(({ array }) => array));
  const blocks = new Map(arrays.map((one) => [key(one), one.block]));
  for (let round = 1; ; round++) {
    const asked = wanted.filter((formula) => !unable.has(formula));
    const answers = await answersOf(workbook, asked, unable, blocks, engine);
    const leaving = new Set(asked.filter(({ array }) => array).flatMap(spilledCells));
    let settled = true;
    for (const formula of asked) {
      const answer = answers.get(formula) ?? [[{ error: "#ERROR!" }]];
      const block = blockOf(formula, answer);
      const fault = faultOf(formula, answer, () => isFree(workbook, formula, block, leaving));
      if (fault) unable.set(formula, fault);
      const moved = !fault && formula.dynamic && !same(block, blocks.get(key(formula))!);
      if (moved) blocks.set(key(formula), block);
      if (fault || moved) settled = false;
    }
    if (settled || round === MOST_ROUNDS)
      return asked.filter((one) => !unable.has(one)).map((formula) => resultOf(formula, answers.get(formula)!));
  }
}

async function answersOf(
  workbook: Workbook,
  asked: readonly Formula[],
  unable: Reasons,
  blocks: ReadonlyMap<string, Block>,
  engine: Engine,
): Promise<Answers> {
  const texts = new Map(asked.map((formula) => [formula, formulaNow(formula, blocks, workbook)]));
  // No value in the file and none from anybody: what leans on it must not take it for 0.
  const unknown = new Set([...unable.keys()].filter(({ cached }) => cached === null));
  const direct = answerDirectly(workbook, asked, unknown, texts);
  const left = new Map([...texts].filter(([formula]) => !direct.has(formula)));
  if (left.size === 0) return direct;
  return new Map([...direct, ...(await answerInEngine(workbook, left, direct, unknown, engine))]);
}

function faultOf(formula: Formula, answer: CellAnswer[][], isFree: () => boolean): string | undefined {
  const first = answer[0]?.[0];
  const error = typeof first === "object" ? first.error : "";
  const isOne = same(blockOf(formula, answer), blockAt(formula));
  if (error === "#SPILL!" || (formula.dynamic && !isOne && !isFree()))
    return "its answer needs more free cells than there are";
  if (error === "#CYCLE!") return "it leans on itself in a circle";
  if (NO_ANSWER.includes(error)) return "the engine cannot calculate it";
  if (!formula.array && !isOne) return "it answers with several cells, but is not an array formula";
  return undefined;
}

/** Whether nothing stands in an answer's way: the sheet's end, merged cells, or a cell that is not left by an answer. */
function isFree({ sheets }: Workbook, { sheet, row, column }: Formula, block: Block, leaving: ReadonlySet<string>) {
  const own = sheets.find(({ name }) => name === sheet)!;
  if (block.bottom > LAST_ROW || block.right > LAST_COLUMN) return false;
  if (mergesOf(own).some((merged) => touch(merged, block))) return false;
  for (const cell of cellsWithin(own.xml, block)) {
    const isHome = cell.row === row && cell.column === column;
    const isLeft = !cell.formula && (cell.value === null || leaving.has(keyOf(sheet, cell.row, cell.column)));
    if (!isHome && !isLeft) return false;
  }
  return true;
}

/** The cells that an answer filled beside its formula's. */
function spilledCells(formula: Formula): string[] {
  return cellsIn(formula.block).map(({ row, column }) => keyOf(formula.sheet, row, column));
}

/** The cells that an answer would fill, starting at its formula. */
function blockOf({ row, column }: Formula, answer: CellAnswer[][]): Block {
  return { top: row, left: column, bottom: row + answer.length - 1, right: column + answer[0]!.length - 1 };
}

function resultOf(formula: Formula, answer: CellAnswer[][]): Result {
  const answered = blockOf(formula, answer);
  const block = formula.dynamic ? answered : formula.array ? formula.block : blockAt(formula);
  const single = same(answered, blockAt(formula));
  const at = (row: number, column: number): CellAnswer =>
    single ? answer[0]![0]! : (answer[row - formula.row]?.[column - formula.column] ?? { error: "#N/A" });
  const values = range(block.top, block.bottom).map((row) =>
    range(block.left, block.right).map((column) => at(row, column)),
  );
  return { formula, block, values };
}

export function cellsIn({ top, left, bottom, right }: Block): { row: number; column: number }[] {
  return range(top, bottom).flatMap((row) => range(left, right).map((column) => ({ row, column })));
}

export function same(one: Block, other: Block): boolean {
  return one.top === other.top && one.left === other.left && one.bottom === other.bottom && one.right === other.right;
}

export function touch(one: Block, other: Block): boolean {
  return one.top <= other.bottom && other.top <= one.bottom && one.left <= other.right && other.left <= one.right;
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
