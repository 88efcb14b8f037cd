import { isCellError } from "../../cells/error";
import { registry } from "../../functions/registry";
import { escaped } from "../../xlsx/escaped";
import type { Entry } from "../entry";
import { calledWith } from "./answered";
import { cellTable } from "./examples";

/** Headings and the answer: what is no longer than that tells no step. */
const NO_STEPS = 2;

/** The steps have as many; the answer under them comes with all of its own. */
const DIGITS = 8;

/** The steps behind the first example that has some, folded away: they are those of WORKING, with these very numbers. */
export function workedExample({ examples }: Entry): string {
  for (const { formula } of examples) {
    const steps = stepsOf(formula);
    if (steps.length <= NO_STEPS) continue;
    const rows = steps.map((row) => withoutEnd(row.map((cell) => escaped(shown(cell)))));
    return [
      `<details><summary>The steps behind <code>${escaped(formula)}</code></summary>`,
      cellTable(rows, "Steps"),
      "</details>",
    ].join("\n");
  }
  return "";
}

function stepsOf(formula: string): unknown[][] {
  const { name, given } = calledWith(formula);
  const steps = registry["WORKING"]!([[name]], ...given);
  return isCellError(steps[0]![0]) ? [] : steps;
}

function shown(cell: unknown): string {
  return String(typeof cell === "number" ? Number(cell.toPrecision(DIGITS)) : cell);
}

/** A sentence alone in its row, which then has the whole row. */
function withoutEnd(cells: string[]): string[] {
  return cells.slice(1).every((cell) => cell === "") ? cells.slice(0, 1) : cells;
}
