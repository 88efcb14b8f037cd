import type { Example } from "../entry";
import { safe } from "./html";

/** Examples, each a formula and what it gives. An answer of several cells is shown as the cells it fills. */
export function exampleList(examples: readonly Example[]): string {
  const items = examples.map(
    ({ formula, result }) => `<li><code>${safe(formula)}</code>\n<div class="gives">${given(result)}</div></li>`,
  );
  return `<ul class="examples">\n${items.join("\n")}\n</ul>`;
}

function given(result: string): string {
  if (!result.startsWith("{")) return `gives <strong>${safe(shown(result))}</strong>`;
  const rows = cells(result).map((row) => `<tr>${row.map((cell) => `<td>${safe(shown(cell))}</td>`).join("")}</tr>`);
  return `fills\n<div class="cells" role="group" aria-label="Cells filled" tabindex="0"><table>\n${rows.join("\n")}\n</table></div>`;
}

/** A text stands without its quotes, as the cell shows it. */
function shown(result: string): string {
  return result.startsWith('"') ? result.slice(1, -1).replaceAll('""', '"') : result;
}

/** The cells of an array constant: {1,2;3,4}. */
function cells(constant: string): string[][] {
  const parts = constant.slice(1, -1).match(/"(?:[^"]|"")*"|[^",;]+|[,;]/g) ?? [];
  const rows: string[][] = [[""]];
  for (const part of parts) {
    if (part === ";") rows.push([""]);
    else if (part === ",") rows.at(-1)!.push("");
    else rows.at(-1)![rows.at(-1)!.length - 1] += part;
  }
  return rows;
}
