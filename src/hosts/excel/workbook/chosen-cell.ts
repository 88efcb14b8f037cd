import { cellAt } from "../../../formula/addresses";
import { expandTables } from "../../../formula/tables";
import { sheetNameOf, sheetPrefixOf } from "../../pane/address";
import { isReference, type ChosenCell } from "../../pane/this-cell";
import { cellsAt } from "./cells";
import { inWorkbook } from "./in-workbook";
import { tablesIn } from "./tables";

/** The chosen cell, with its formula as a person sees it. */
export function chosenCell(): Promise<ChosenCell> {
  return inWorkbook(async (context) => {
    const cell = context.workbook.getSelectedRange().getCell(0, 0);
    cell.load("address, formulas, values, numberFormat");
    await context.sync();
    const formula: unknown = cell.formulas[0]?.[0];
    return {
      address: cell.address,
      formula: typeof formula === "string" && formula.startsWith("=") ? formula : "",
      value: cell.values[0]?.[0],
      format: String(cell.numberFormat[0]?.[0] ?? ""),
    };
  });
}

/** Calls back whenever another cell is chosen; an Excel that does not say so is asked by the button. */
export function whenChosen(told: () => void): void {
  if (typeof Excel === "undefined") return;
  void Excel.run(async (context) => {
    context.workbook.onSelectionChanged.add(async () => told());
    await context.sync();
  }).catch(() => undefined);
}

/** The cells that a piece of a formula points at: an address, a table's column, a name. */
export async function cellsOf(piece: string, from: string): Promise<unknown[][] | undefined> {
  const sheet = sheetNameOf(sheetPrefixOf(from));
  const reference = isReference(piece)
    ? piece
    : await referenceIn(piece, sheet, from.slice(sheetPrefixOf(from).length));
  if (reference === undefined) return undefined;
  const address = reference.replaceAll("$", "");
  return cellsAt(sheetPrefixOf(address) === "" ? sheetPrefixOf(from) + address : address);
}

/** A name or a table's column as the cells it stands for; nothing for anything else. */
function referenceIn(piece: string, sheet: string, address: string): Promise<string | undefined> {
  return inWorkbook(async (context) => {
    const { names } = context.workbook;
    names.load("items/name, items/formula");
    const tables = await tablesIn(context);
    const named = names.items.find(({ name }) => name.toLowerCase() === piece.toLowerCase());
    if (named) return plainOr(String(named.formula).replace(/^=/, ""));
    return plainOr(expandTables(piece, tables, { sheet, ...cellAt(address) }));
  });
}

function plainOr(reference: string): string | undefined {
  return isReference(reference) ? reference : undefined;
}
