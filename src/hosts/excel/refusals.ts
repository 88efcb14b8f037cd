import { isCellError } from "../../cells/error";
import { shown } from "../../cells/cell";
import type { RefusedCall } from "../pane/sheet-host";

/** Some builds of Excel show no message beside a cell. The pane tells the last so many. */
const MOST_KEPT = 100;

const kept: RefusedCall[] = [];

/** Keeps what a call was refused for, if it was. */
export function keepRefusal(name: string, handed: readonly (unknown[][] | undefined)[], answer: unknown[][]): void {
  const errors = answer.flat().filter(isCellError);
  const [first] = errors;
  if (!first) return;
  const given = handed
    .map(shortened)
    .join(", ")
    .replace(/(?:, )+$/, "");
  kept.unshift({ name, given, error: first.error, message: first.message, rows: errors.length });
  kept.length = Math.min(kept.length, MOST_KEPT);
}

/** The last refusals, the newest first. */
export function lastRefusals(): readonly RefusedCall[] {
  return kept;
}

function shortened(cells: unknown[][] = []): string {
  const [[cell] = []] = cells;
  if (cells.length > 1 || (cells[0]?.length ?? 0) > 1) return `${cells.length} × ${cells[0]!.length} cells`;
  return cell === null || cell === undefined || cell === "" ? "" : shown(cell);
}
