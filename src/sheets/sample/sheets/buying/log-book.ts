import type { Column } from "../../../definition";
import { logBookOf } from "../../../definitions/log-book";
import { DOLLARS } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { yardRows } from "../../yard/read";

/** What the yard keeps of a log beside what the log book asks for. */
const OF_THE_YARD: readonly Column[] = [
  { heading: "Load", kind: "text", width: 7, note: "that brought it" },
  { heading: "Paid", format: DOLLARS.whole, width: 8, note: "minus: we were paid" },
];

/** The mill's opening and the room round a log stand on the sheet Mill, by the same names. */
const ON_MILL = { "Mill opening": "Mill_opening", "Room to keep": "Opening_clearance" };

/** The log book: what came in, what it scales, what it weighs, and whether the mill takes it. */
export function drawLogBook(draft: Draft): void {
  const rows = yardRows("logs", ["Small 1", "Small 2", "Large 1", "Large 2", "Sweep"]);
  drawTableSheet(draft, logBookOf("Logs", OF_THE_YARD, rows), ON_MILL);
}
