import type { Package } from "./package";
import { relationsOf, removePart } from "./relations";

/**
 * Excel writes down in which order it calculated; without the list it makes a new one. A list that names a cell without a
 * formula is a damaged file to it, so the list goes where formulas come or go.
 */
export function dropCalculationOrder(file: Package, workbookPart: string): void {
  const order = relationsOf(file, workbookPart).find(({ type }) => type === "calcChain");
  if (order && file.has(order.target)) removePart(file, order.target, workbookPart);
}
