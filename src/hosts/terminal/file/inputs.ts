import { cellsIn } from "../../../formula/addresses";
import type { Reference } from "../../../formula/references";
import { touch } from "./calculate";
import { keyOf, type Formula } from "./workbook";

/** A reference to more cells is held against every formula without a value, one by one. */
const FEW_CELLS = 64;
/** More comparisons than these cost more than calculating everything that has no value. */
const MOST_COMPARISONS = 20_000_000;

/** The formulas without a value in the file on which some formulas lean, over however many steps. */
export function inputsWithoutValue(start: readonly Formula[], all: readonly Formula[]): Formula[] {
  const valueless = all.filter(({ cached }) => cached === null);
  if (valueless.length === 0 || start.some(({ searches }) => searches)) return valueless;
  const byPlace = new Map(valueless.map((formula) => [keyOf(formula.sheet, formula.row, formula.column), formula]));
  const found = new Set<Formula>();
  const open = [...start];
  let comparisons = 0;
  for (let formula = open.pop(); formula; formula = open.pop())
    for (const reference of formula.references) {
      const wide = cellsIn(reference.block) > FEW_CELLS;
      comparisons += wide ? valueless.length : 0;
      if (comparisons > MOST_COMPARISONS) return valueless;
      for (const input of wide ? valueless.filter((one) => isIn(one, reference)) : few(reference, byPlace))
        if (!found.has(input)) {
          found.add(input);
          open.push(input);
        }
    }
  return [...found];
}

function isIn({ sheet, block }: Formula, reference: Reference): boolean {
  return sheet.toLowerCase() === reference.sheet.toLowerCase() && touch(block, reference.block);
}

function few({ sheet, block }: Reference, byPlace: ReadonlyMap<string, Formula>): Formula[] {
  const found: Formula[] = [];
  for (let row = block.top; row <= block.bottom; row++)
    for (let column = block.left; column <= block.right; column++) {
      const input = byPlace.get(keyOf(sheet, row, column));
      if (input) found.push(input);
    }
  return found;
}
