import { isCellError } from "../../cells/error";
import type { Example } from "../entry";
import { arrayPieces, literal } from "../../formula/literals";
import { escaped } from "../../xlsx/escaped";
import { answered } from "./answered";

/** Examples, each a formula and what it gives. An answer of several cells is shown as the cells it fills. */
export function exampleList(examples: readonly Example[]): string {
  const items = examples.map(
    ({ formula, result }) =>
      `<li><code>${escaped(formula)}</code>\n<div class="gives">${given(result)}${reason(formula)}</div></li>`,
  );
  return `<ul class="examples">\n${items.join("\n")}\n</ul>`;
}

/** Why an example has no answer, in the words that the cell's message has. */
function reason(formula: string): string {
  const [[only] = []] = answered(formula);
  return isCellError(only) ? ` <span class="quiet">${escaped(only.message)}</span>` : "";
}

function given(result: string): string {
  if (!result.startsWith("{")) return `gives <strong>${escaped(shown(result))}</strong>`;
  const rows = arrayPieces(result).map((row) => row.map((cell) => escaped(shown(cell))));
  return `fills\n${cellTable(rows, "Cells filled")}`;
}

/** Cells under each other, in HTML; where there is no room for them they are scrolled by themselves. One alone has its row. */
export function cellTable(rows: readonly (readonly string[])[], label: string): string {
  const width = Math.max(...rows.map((row) => row.length));
  const cellsOf = (row: readonly string[]) =>
    row.length === 1 && width > 1
      ? `<td colspan="${width}">${row[0]}</td>`
      : row.map((cell) => `<td>${cell}</td>`).join("");
  const lines = rows.map((row) => `<tr>${cellsOf(row)}</tr>`);
  return `<div class="cells" role="group" aria-label="${label}" tabindex="0"><table>\n${lines.join("\n")}\n</table></div>`;
}

/** A text stands without its quotes, as the cell shows it; a number with the digits that are checked. */
function shown(result: string): string {
  return result.startsWith('"') ? String(literal(result)) : result;
}
