import type { CellAnswer, Engine } from "../../../engine/engine";
import type { FileCell, FileSheet } from "../../../engine/workbook/read";
import { addressOf, cellsIn, placeOf, type Block } from "../../../formula/addresses";
import { referencesOf, searchesCells } from "../../../formula/references";
import { cellsWithin } from "../../../xlsx/find-cells";
import type { SheetCell } from "../../../xlsx/sheet-cells";
import type { Answers } from "./direct";
import { heldOf } from "./calculate";
import { type Formula, type Sheet, type Workbook } from "./workbook";

/** How the formulas that are left to the engine read now. */
type Texts = ReadonlyMap<Formula, string>;

/**
 * Asks the engine for formulas. It gets these, the answers that are known already, and of the file's other cells only
 * those that the formulas point at.
 */
export async function answerInEngine(
  workbook: Workbook,
  texts: Texts,
  known: Answers,
  unknown: ReadonlySet<Formula>,
  engine: Engine,
): Promise<Answers> {
  const leanedOn = blocksLeanedOn(texts);
  const sheets = workbook.sheets.map((sheet) => sheetFor(sheet, texts, known, unknown, leanedOn));
  const opened = await engine.calculate({ names: [], sheets });
  const filled = new Map(
    opened.formulaCells().map(({ sheet, address, filled }) => [`${sheet}!${address}`, filled] as const),
  );
  return new Map(
    [...texts.keys()].map((formula) => {
      const { sheet, row, column } = formula;
      const block = filled.get(`${sheet}!${addressOf(row, column)}`);
      const { bottom, right } = block ?? { bottom: row, right: column };
      const answer = Array.from({ length: bottom - row + 1 }, (_, down) =>
        Array.from({ length: right - column + 1 }, (_, along): CellAnswer =>
          opened.value(sheet, addressOf(row + down, column + along)),
        ),
      );
      return [formula, answer];
    }),
  );
}

/** The blocks that formulas point at, by sheet; everything where a formula finds its cells only while it calculates. */
function blocksLeanedOn(texts: Texts): ReadonlyMap<string, Block[]> | "everything" {
  const bySheet = new Map<string, Map<string, Block>>();
  for (const [{ sheet: home }, text] of texts) {
    if (searchesCells(text)) return "everything";
    for (const { sheet, block } of referencesOf(text, home)) {
      const own = bySheet.get(sheet.toLowerCase()) ?? new Map<string, Block>();
      bySheet.set(sheet.toLowerCase(), own.set(`${block.top} ${block.left} ${block.bottom} ${block.right}`, block));
    }
  }
  return new Map([...bySheet].map(([sheet, blocks]) => [sheet, [...blocks.values()]]));
}

function sheetFor(
  sheet: Sheet,
  texts: Texts,
  known: Answers,
  unknown: ReadonlySet<Formula>,
  leanedOn: ReturnType<typeof blocksLeanedOn>,
): FileSheet {
  const { name, xml, formulas } = sheet;
  const cells = new Map<string, FileCell>();
  const put = (cell: FileCell) => cells.set(placeOf(cell), cell);
  const blocks = leanedOn === "everything" ? "everything" : (leanedOn.get(name.toLowerCase()) ?? []);
  for (const { row, column, value } of fileCells(sheet, blocks)) if (value !== null) put({ row, column, value });
  // Without the file's values, so that what is read afterwards can only be the engine's.
  for (const formula of formulas) if (texts.has(formula) || known.has(formula)) clear(formula.block, cells);
  for (const formula of formulas) {
    const { row, column, stored, array, block } = formula;
    const [text, answer] = [texts.get(formula), known.get(formula)];
    if (text !== undefined)
      put({ row, column, value: null, stored, formula: text, ...(array ? { spill: block } : {}) });
    else if (unknown.has(formula)) put({ row, column, value: "#N/A" });
    for (const [down, line] of (answer ?? []).entries())
      for (const [along, value] of line.entries())
        put({ row: row + down, column: column + along, value: heldOf(value) });
  }
  const size = { rows: (xml.rows.at(-1)?.row ?? 0) + 1, columns: lastColumn(sheet) + 1 };
  return { name, cells: [...cells.values()], size };
}

function clear(block: Block, cells: Map<string, FileCell>): void {
  for (let row = block.top; row <= block.bottom; row++)
    for (let column = block.left; column <= block.right; column++) cells.delete(placeOf({ row, column }));
}

/** The file's cells in some blocks. Where blocks lie over each other many times, going through the sheet once is less. */
function fileCells({ xml }: Sheet, blocks: readonly Block[] | "everything"): Iterable<SheetCell> {
  const all = () => xml.rows.flatMap(({ cells }) => cells);
  if (blocks === "everything") return all();
  const pointedAt = blocks.reduce((sum, block) => sum + cellsIn(block), 0);
  const held = xml.rows.reduce((sum, { cells }) => sum + cells.length, 0);
  if (blocks.length > 1 && pointedAt > 4 * held) return all();
  return within(xml, blocks);
}

function* within(xml: Sheet["xml"], blocks: readonly Block[]): Generator<SheetCell> {
  for (const block of blocks) yield* cellsWithin(xml, block);
}

function lastColumn({ xml }: Sheet): number {
  return xml.rows.reduce((most, { cells }) => Math.max(most, cells.at(-1)?.column ?? 0), 0);
}
