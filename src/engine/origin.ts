import { addressOf, blockOf, type Block } from "../formula/addresses";
import { scan } from "../formula/scan";

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
  for (const { sheet, block } of blocksIn(cells.formulaAt(place) ?? "", place.sheet, cells)) {
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

const REFERENCE =
  /(?:([A-Z_][\w.]*)?(!))?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![\w(.!])|([A-Z_][\w.]*)(?![\w(.!])/gi;

/** The blocks of cells that a formula points at, by address or by name. */
function blocksIn(formula: string, home: string, cells: Cells): { sheet: string; block: Block }[] {
  const found: { sheet: string; block: Block }[] = [];
  let quotedSheet: string | undefined;
  for (const { kind, text } of scan(formula)) {
    if (kind === "sheet") quotedSheet = text.slice(1, -1).replace(/''/g, "'");
    if (kind !== "plain") continue;
    for (const [, sheet, mark, address, name] of text.matchAll(REFERENCE)) {
      if (address) found.push({ sheet: sheet ?? (mark ? quotedSheet : undefined) ?? home, block: blockOf(address) });
      else if (name) found.push(...blocksIn(cells.named(name) ?? "", home, NO_NAMES));
    }
    quotedSheet = undefined;
  }
  return found;
}

/** A name that stands for a name is not followed further. */
const NO_NAMES: Cells = { errorAt: () => undefined, formulaAt: () => undefined, named: () => undefined };

/** `B4`, or `Log book, B4` when that is another sheet. */
export function spoken({ sheet, row, column }: CellPlace, home: string): string {
  const address = addressOf(row, column);
  return sheet === home ? address : `${sheet}, ${address}`;
}
