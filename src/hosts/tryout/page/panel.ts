import { argumentText } from "../../../catalog/printing/argument-text";
import type { Entry } from "../../../catalog/entry";
import { shownDrawing } from "../../pane/drawing";
import { element } from "../../pane/element";
import { byId } from "./by-id";
import { signature } from "./signature";

/** The selected cell, as the panel tells it. */
export interface SelectedCell {
  name: string;
  formula: string;
  /** Another cell whose answer spills into this one. */
  spilledFrom: string | undefined;
  answer: string;
  why: string | undefined;
  /** The end of the log where the cell plans its cuts, as SVG. */
  endView: string | undefined;
  /** The sheet that a link in the cell leads to, and the way there. */
  link: { sheet: string; follow(): void } | undefined;
}

/** Shows the selected cell: its formula, its answer, why it has none, and the functions that it uses. */
export function showCell(cell: SelectedCell, catalog: readonly Entry[]): void {
  const parts: HTMLElement[] = [element("h2", {}, cell.name)];
  if (cell.formula) parts.push(element("p", { class: "formula" }, cell.formula));
  if (cell.spilledFrom) parts.push(element("p", { class: "quiet" }, `Part of the answer of ${cell.spilledFrom}.`));
  if (cell.answer) parts.push(element("p", { class: cell.formula ? "answer" : "content" }, cell.answer));
  if (cell.link) parts.push(linkButton(cell.link));
  if (cell.why) parts.push(element("p", { class: "why" }, cell.why));
  if (!cell.formula && !cell.answer)
    parts.push(element("p", { class: "quiet" }, "An empty cell. Type =BOLE. to see the functions."));
  if (cell.endView) parts.push(element("div", { class: "pane" }, shownDrawing(cell.endView)));
  for (const entry of functionsIn(cell.formula, catalog)) parts.push(...described(entry));
  byId("cell").replaceChildren(...parts);
}

function linkButton({ sheet, follow }: NonNullable<SelectedCell["link"]>): HTMLElement {
  const button = element("button", { class: "link" }, `Go to the sheet ${sheet}`);
  button.addEventListener("click", follow);
  return button;
}

function functionsIn(formula: string, catalog: readonly Entry[]): Entry[] {
  const names = new Set([...formula.matchAll(/BOLE\.([A-Z0-9]+)/gi)].map((found) => found[1]?.toUpperCase()));
  return catalog.filter((entry) => names.has(entry.name));
}

/** A function in short: what it answers, what it takes, what to beware of. */
function described(entry: Entry): HTMLElement[] {
  const params = entry.params.flatMap((param) => [
    element("dt", {}, param.name, param.optional ? element("span", { class: "quiet" }, " may be left out") : ""),
    element("dd", {}, argumentText(param)),
  ]);
  const example = entry.examples[0];
  return [
    element("h3", {}, signature(entry)),
    element("p", {}, entry.summary),
    element("dl", {}, ...params),
    ...(entry.returns ? [element("p", {}, `Answers: ${entry.returns}.`)] : []),
    ...(example
      ? [element("p", { class: "quiet" }, "For example"), element("p", { class: "formula" }, example.formula)]
      : []),
    ...entry.cautions.map((caution) => element("p", { class: "caution" }, caution)),
    ...(entry.grade ? [element("p", { class: "quiet" }, `Rests on: ${entry.grade}.`)] : []),
  ];
}
