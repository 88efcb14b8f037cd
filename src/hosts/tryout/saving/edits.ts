import { ADD_IN } from "../../../catalog/about/add-in";
import { addressOf, blockAt, isWithin, placeOf, rangeOf, type Block } from "../../../formula/addresses";
import { functionsOf } from "../../../formula/functions";
import { storedFormula } from "../../../formula/stored";
import { cellsWithin, findCell } from "../../../xlsx/find-cells";
import { formulasIn, type CellWithFormula } from "../../../xlsx/formulas";
import type { Held } from "../../../xlsx/held";
import type { SheetPart } from "../../../xlsx/parts";
import { Refused } from "../../../xlsx/refused";
import type { CellChange, EnteredFormula } from "../../../xlsx/sheet-edit";
import { attribute } from "../../../xlsx/xml";
import { same } from "../../terminal/file/calculate";
import type { ChangedCell } from "./changes";
import { showsUnanswered, valueInFile } from "./file-values";
import { mustBeStorable } from "./storable";

/** What the edits of a sheet need of its workbook. */
export interface EditTools {
  /** The mark of a formula whose answer grows and shrinks, asked for only where one is typed. */
  mark(): string | undefined;
  /** The number of a look like another one that shows numbers in this way. */
  lookWith(look: number, format: string): number;
}

export interface SheetEdits {
  changes: CellChange[];
  /** Whether formulas come or go. */
  formulasMove: boolean;
  /** Cells whose answer the page does not know, and which Excel has to calculate. */
  unanswered: string[];
}

/** What becomes of a sheet of the file when its cells change as the page says. */
export function editsOf(
  sheet: Pick<SheetPart, "name" | "xml">,
  changed: readonly ChangedCell[],
  tools: EditTools,
): SheetEdits {
  const formulas = formulasIn(sheet.xml);
  const formulaAt = new Map(formulas.map((one) => [placeOf(one.cell), one]));
  const byPlace = new Map(changed.map((cell) => [placeOf(cell), cell]));
  mustNotSplit(sheet.name, formulas, byPlace);
  const blocks = blocksAfter(formulas, changed);
  const kept = changed.filter((cell) => !cell.spilled || blocks.some((block) => isWithin(cell, block)));
  const edits = new Map(kept.map((cell) => [placeOf(cell), editOf(sheet, cell, formulaAt.get(placeOf(cell)), tools)]));
  for (const edit of [...leftByArrays(sheet, formulas, byPlace, blocks), ...unshared(formulas, byPlace)])
    if (!edits.has(placeOf(edit))) edits.set(placeOf(edit), edit);
  const isTyped = ({ answered }: ChangedCell) => !answered;
  return {
    changes: [...edits.values()],
    formulasMove: changed.some((cell) => isTyped(cell) && (cell.formula !== undefined || formulaAt.has(placeOf(cell)))),
    unanswered: kept.filter(showsUnanswered).map((cell) => `${sheet.name}!${addressOf(cell.row, cell.column)}`),
  };
}

function editOf(
  { name, xml }: Pick<SheetPart, "name" | "xml">,
  cell: ChangedCell,
  there: CellWithFormula | undefined,
  tools: EditTools,
): CellChange {
  const { row, column, formula, fills, answered, format } = cell;
  const value = valueInFile(cell);
  const look = format === undefined ? {} : { look: tools.lookWith(lookAt(xml, row, column), format) };
  if (formula !== undefined) {
    mustBeStorable(`${name}!${addressOf(row, column)}`, formula);
    return { row, column, value, entered: enteredFormula(formula, fills ?? blockAt(cell), tools.mark), ...look };
  }
  if (answered) {
    const resized = there?.dynamic && there.fills ? { ref: rangeOf(fills ?? blockAt(cell)) } : {};
    return { row, column, value, ...resized, ...look };
  }
  return { row, column, value, dropFormula: true, ...look };
}

function lookAt(xml: SheetPart["xml"], row: number, column: number): number {
  return Number(attribute(findCell(xml, row, column)?.attributes ?? "", "s") ?? 0);
}

/**
 * A typed formula as the file stores it. A call of ours is a dynamic array also where it fills one cell, as Excel itself
 * writes it; else it would show with an @ in front.
 */
export function enteredFormula(typed: string, fills: Block, mark: EditTools["mark"]): EnteredFormula {
  const text = storedFormula(ADD_IN, typed);
  const growing =
    functionsOf(ADD_IN, typed).length > 0 || !same(fills, blockAt({ row: fills.top, column: fills.left }));
  if (!growing) return { text };
  const number = mark();
  return { text, array: { ref: rangeOf(fills), ...(number === undefined ? {} : { mark: number }) } };
}

/** A cell within the older kind of array formula cannot hold anything of its own. */
function mustNotSplit(
  sheet: string,
  formulas: readonly CellWithFormula[],
  changed: ReadonlyMap<string, ChangedCell>,
): void {
  for (const { cell, fills, dynamic } of formulas) {
    if (!fills || dynamic || isTyped(changed.get(placeOf(cell)))) continue;
    const own = [...changed.values()].find(
      (one) => isTyped(one) && !one.spilled && isWithin(one, fills) && placeOf(one) !== placeOf(cell),
    );
    if (own)
      throw new Refused(
        `${sheet}!${addressOf(own.row, own.column)} is part of the array formula of ${rangeOf(fills)}: change that formula in ${addressOf(cell.row, cell.column)} or take back what was typed there`,
      );
  }
}

function isTyped(cell: ChangedCell | undefined): boolean {
  return cell !== undefined && !cell.answered;
}

/** The blocks that array formulas fill when all changes are made. */
function blocksAfter(formulas: readonly CellWithFormula[], changed: readonly ChangedCell[]): Block[] {
  const known = new Map(
    formulas.flatMap(({ cell, fills, dynamic }) => (fills ? [[placeOf(cell), { fills, dynamic }]] : [])) as [
      string,
      { fills: Block; dynamic: boolean },
    ][],
  );
  for (const cell of changed) {
    const there = known.get(placeOf(cell));
    if (cell.formula !== undefined) known.set(placeOf(cell), { fills: cell.fills ?? blockAt(cell), dynamic: true });
    else if (!cell.answered) known.delete(placeOf(cell));
    else if (there?.dynamic) known.set(placeOf(cell), { ...there, fills: cell.fills ?? blockAt(cell) });
  }
  return [...known.values()].map(({ fills }) => fills);
}

/** Cells that an array formula of the file filled and no answer fills any more. */
function leftByArrays(
  { xml }: Pick<SheetPart, "xml">,
  formulas: readonly CellWithFormula[],
  changed: ReadonlyMap<string, ChangedCell>,
  blocks: readonly Block[],
): CellChange[] {
  return formulas.flatMap(({ cell, fills }) => {
    if (!fills || !changed.has(placeOf(cell))) return [];
    return [...cellsWithin(xml, fills)]
      .filter((one) => one !== cell && !one.formula && !blocks.some((block) => isWithin(one, block)))
      .map(({ row, column }) => ({ row, column, value: null }));
  });
}

/** A formula that was copied stands in the file once, in the first of its cells: where that one goes, each gets its own. */
function unshared(formulas: readonly CellWithFormula[], changed: ReadonlyMap<string, ChangedCell>): CellChange[] {
  const groupOf = ({ cell: { formula } }: CellWithFormula) =>
    attribute(formula!.attributes, "t") === "shared" ? attribute(formula!.attributes, "si") : undefined;
  const losing = new Set(
    formulas.filter((one) => one.cell.formula!.text && isTyped(changed.get(placeOf(one.cell)))).map(groupOf),
  );
  losing.delete(undefined);
  return formulas.flatMap((one) => {
    const group = groupOf(one);
    if (group === undefined || !losing.has(group)) return [];
    const { row, column } = one.cell;
    const answered = changed.get(placeOf(one.cell));
    const value: { value?: Held } = answered ? { value: valueInFile(answered) } : {};
    return [{ row, column, entered: { text: one.stored }, ...value }];
  });
}
