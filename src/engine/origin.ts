import { addressOf } from "../formula/addresses";
import { referencesIn, type Reference } from "../formula/references";
import { tokensOf } from "../formula/tokens";

/** A cell of a workbook. */
export interface CellPlace {
  sheet: string;
  row: number;
  column: number;
}

/** What the search for an error's origin needs to know of the workbook. */
export interface Cells {
  /** The error that a cell shows, if it shows one. */
  errorAt(place: CellPlace): string | undefined;
  formulaAt(place: CellPlace): string | undefined;
  /** What a defined name stands for: `'Log book'!$B$4`. */
  named(name: string): string | undefined;
}

/** A formula may point at whole columns; further down than this nobody looks. */
const MOST_CELLS = 20_000;
const MOST_STEPS = 50;

/**
 * The first cell in the chain of those that show the same error one after another: the one to put right. Undefined
 * when the error arises in the cell itself.
 */
export function originOf(start: CellPlace, error: string, cells: Cells): CellPlace | undefined {
  let origin: CellPlace | undefined;
  let place = start;
  for (let step = 0; step < MOST_STEPS; step++) {
    const before = sameError(place, error, cells);
    if (!before) break;
    origin = place = before;
  }
  return origin;
}

function sameError(place: CellPlace, error: string, cells: Cells): CellPlace | undefined {
  for (const { sheet, block } of pointedAt(cells.formulaAt(place) ?? "", place.sheet, cells)) {
    let seen = 0;
    for (let row = block.top; row <= block.bottom; row++)
      for (let column = block.left; column <= block.right && seen++ < MOST_CELLS; column++)
        if (!isAt(place, { sheet, row, column }) && cells.errorAt({ sheet, row, column }) === error)
          return { sheet, row, column };
  }
  return undefined;
}

function isAt(one: CellPlace, other: CellPlace): boolean {
  return one.sheet === other.sheet && one.row === other.row && one.column === other.column;
}

/** What a formula points at, by address or by name. A name that stands for a name is not followed further. */
function pointedAt(formula: string, home: string, cells: Cells): Reference[] {
  const tokens = tokensOf(formula);
  const byName = tokens.flatMap(({ kind, text }) =>
    kind === "name" ? referencesIn(tokensOf(cells.named(text) ?? ""), home) : [],
  );
  return [...referencesIn(tokens, home), ...byName];
}

/** `B4`, or `Log book, B4` when that is another sheet. */
export function spoken({ sheet, row, column }: CellPlace, home: string): string {
  const address = addressOf(row, column);
  return sheet === home ? address : `${sheet}, ${address}`;
}
