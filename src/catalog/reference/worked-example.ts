import { isCellError } from "../../cells/error";
import { argumentPieces, arrayConstant, literal } from "../../formula/literals";
import { registry } from "../../functions/registry";
import { escaped } from "../../xlsx/escaped";
import type { Entry } from "../entry";
import { cellTable } from "./examples";

/** Headings and the answer: what is no longer than that tells no step. */
const NO_STEPS = 2;

/** The steps have as many; the answer under them comes with all of its own. */
const DIGITS = 8;

/** The steps behind the first example that has some, folded away: they are those of WORKING, with these very numbers. */
export function workedExample({ name, examples }: Entry): string {
  for (const { formula } of examples) {
    const steps = stepsOf(name, formula);
    if (steps.length <= NO_STEPS) continue;
    const rows = steps.map((row) => row.map((cell) => escaped(shown(cell))));
    return [
      `<details><summary>The steps behind <code>${escaped(formula)}</code></summary>`,
      cellTable(rows, "Steps"),
      "</details>",
    ].join("\n");
  }
  return "";
}

function stepsOf(name: string, formula: string): unknown[][] {
  const given = argumentPieces(formula).map(cellsOf);
  const steps = registry["WORKING"]!([[name]], ...given);
  return isCellError(steps[0]![0]) ? [] : steps;
}

function cellsOf(piece: string): unknown[][] {
  const text = piece.trim();
  return text.startsWith("{") ? arrayConstant(text) : [[literal(text) ?? (text === "" ? null : text)]];
}

function shown(cell: unknown): string {
  return String(typeof cell === "number" ? Number(cell.toPrecision(DIGITS)) : cell);
}
