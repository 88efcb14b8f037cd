import { addressOf } from "../../../formula/addresses";
import { supports } from "./in-workbook";

/** A formula that hangs on a cell of the copy. */
export interface FormulaNote {
  row: number;
  column: number;
  formula: string;
}

/**
 * Keeps formulas as notes on the cells of a copied sheet, or as comments where Excel is too old to write notes. A cell
 * with a note or comment of its own keeps that; those are answered back.
 */
export async function addNotes(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  notes: readonly FormulaNote[],
): Promise<FormulaNote[]> {
  const taken = await annotatedCells(context, sheet);
  const free = notes.filter((note) => !taken.has(addressOf(note.row, note.column)));
  for (const note of free) {
    const [cell, text] = [sheet.getRange(addressOf(note.row, note.column)), `Formula: ${note.formula}`];
    if (supports("1.18")) sheet.notes.add(cell, text);
    else sheet.comments.add(cell, text);
  }
  await context.sync();
  return notes.filter((note) => taken.has(addressOf(note.row, note.column)));
}

async function annotatedCells(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Set<string>> {
  const withNotes = supports("1.18") ? sheet.notes : undefined;
  withNotes?.load("items");
  sheet.comments.load("items");
  await context.sync();
  const places = [...(withNotes?.items ?? []), ...sheet.comments.items].map((item) => item.getLocation());
  for (const place of places) place.load("address");
  await context.sync();
  return new Set(places.map(({ address }) => address.slice(address.lastIndexOf("!") + 1)));
}
