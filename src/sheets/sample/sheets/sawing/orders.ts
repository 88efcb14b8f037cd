import { ordersOf } from "../../../definitions/orders";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { yardRows } from "../../yard/read";

/** What three customers want, and logs that a tree crew offers: the two lists stand side by side in one table. */
export function drawOrders(draft: Draft): void {
  const wanted = yardRows("orders", ["Thickness", "Width", "Length", "Count"]);
  const offered = yardRows("offered-logs", ["Diameter", "Log length", "Large end"]);
  drawTableSheet(draft, ordersOf(offered.map((log, i) => ({ ...wanted[i], ...log }))));
}
