import { laidOut } from "../../../laid-out";
import { ordersOf } from "../../../definitions/orders";
import { FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { entry, spill } from "../../drawing/cells";
import { caution, freeze, put, repeatRows, startPage } from "../../drawing/page";
import { HEADER, SMALL, TEXT } from "../../drawing/style";
import { drawTableSheet } from "../../drawing/table-sheet";
import { yardRows } from "../../yard/read";

const WANTED = yardRows("orders", ["Thickness", "Width", "Length", "Count"]);
const OFFERED = yardRows("offered-logs", ["Diameter", "Log length", "Large end"]);
const SHEET = ordersOf(OFFERED.map((log, i) => ({ ...WANTED[i], ...log })));

/** What three customers want, and logs that a tree crew offers: the two lists stand side by side in one table. */
export function drawOrders(draft: Draft): void {
  drawTableSheet(draft, SHEET);
}

const HEADER_ROW = 8;
/** As the head's scale is read: 15 3/16. */
const READ_HEIGHT = "# ??/??";
/** Of the passes: log, pass, heights, run, rip, cut, pieces, board feet, note. */
const FORMATS = ["", "", READ_HEIGHT, READ_HEIGHT, READ_HEIGHT, "", "", "", "", FORMAT.one, ""];
const WIDTHS = [9, 7, 12, 9, 9, 11, 15, 16, 34, 9, 26];

/** How each log of that plan is sawn, to print and take to the mill. */
export function drawOrderPasses(draft: Draft): void {
  const page = startPage(draft, "Order passes", {
    title: "Order passes: how the logs are sawn for the orders",
    lead: "Blade heights above the bed at the blade's lower side; where each flitch is cut off from the butt, ripped and crosscut, and whose pieces come of it.",
    widths: WIDTHS,
  });
  caution(
    page,
    3,
    "lock out the power before you touch the blade. Dog the log, and stand clear of its fall when it is cut free. Keep to the maker's limits.",
  );
  put(page, "A5", "Log", TEXT);
  entry(page, "C5", "all", { name: "Order_log", format: FORMAT.text });
  put(page, "D5", "one log of the plan by its name, or all", SMALL);
  const passes = `=BOLE.ORDERPASSES(Orders[[Thickness]:[Green size]], Orders[[Diameter]:[Log]], Order_kerf, ${settingsCells()}, IF(Order_log="all", "", Order_log))`;
  spill(page, `A${HEADER_ROW}`, passes, FORMATS, HEADER);
  freeze(page, HEADER_ROW, 0);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
}

/** The settings of the orders, on their own sheet. */
function settingsCells(): string {
  const { cells } = laidOut(SHEET, { sheet: "Orders", table: "Orders" }, "table");
  const rowOf = (label: string) => cells.find(({ content, look }) => content === label && look === "label")!.row;
  return `Orders!$A$${rowOf("crosscut kerf")}:$B$${rowOf("least")}`;
}
