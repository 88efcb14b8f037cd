import { millSheetOf, type MillLog } from "../../../definitions/mill-sheet";
import type { Draft } from "../../draft";
import { asForm } from "../../drawing/page";
import { drawTableSheet } from "../../drawing/table-sheet";

/** A log of the log book, with the means of its two readings at each end. */
export const MILL_LOGS: Readonly<Record<"live" | "cant" | "quarter", MillLog & { lines: number }>> = {
  live: {
    ...{ log: "L04", species: "northern red oak", smallEnd: "29 1/2", largeEnd: "32 1/2", length: "10'3\"" },
    ...{ pattern: "live", lines: 30 },
  },
  cant: {
    ...{ log: "L09", species: "white ash", smallEnd: "23 1/2", largeEnd: "26 1/2", length: "12'3\"" },
    ...{ pattern: "cant", lines: 42 },
  },
  quarter: {
    ...{ log: "L07", species: "American sycamore", smallEnd: "39 1/2", largeEnd: "43 1/2", length: "10'3\"" },
    ...{ pattern: "quarter", lines: 32 },
  },
};

/** The mill sheet of one log for each way of sawing; the one sawn live is the log of the sheet Cut plan. */
export function drawMillSheet(draft: Draft, way: keyof typeof MILL_LOGS): void {
  const { lines, ...log } = MILL_LOGS[way];
  const names = { title: `Mill sheet ${way}`, table: `Mill_${way}` };
  const { page } = drawTableSheet(draft, {
    ...millSheetOf(names, lines, log),
    heading: `Mill sheet: the passes of the saw for log ${log.log}`,
  });
  asForm(page);
}
