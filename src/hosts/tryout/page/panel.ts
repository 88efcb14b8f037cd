import type { PlanDrawing } from "../../../functions/plan-drawing";
import type { Entry } from "../../../catalog/entry";
import { shownDrawing } from "../../pane/drawing";
import { element } from "../../pane/element";
import { byId } from "./by-id";
import { callsShown, dateWarning, type LookUp } from "../../pane/this-cell";

/** The selected cell, as the panel tells it. */
export interface SelectedCell {
  name: string;
  formula: string;
  /** Another cell whose answer spills into this one. */
  spilledFrom: string | undefined;
  answer: string;
  why: string | undefined;
  /** The end of the log where the cell plans its cuts, as SVG. */
  endView: PlanDrawing | undefined;
  /** The sheet that a link in the cell leads to, and the way there. */
  link: { sheet: string; follow(): void } | undefined;
  /** The value and the number format of a cell that does not calculate. */
  value: unknown;
  /** What was typed last, into another cell, and became a day. */
  becameDay: string | undefined;
  /** Whether it is empty and something is being typed into it. */
  typing: boolean;
  format: string | undefined;
}

/** Shows the selected cell: its formula, its answer, why it has none, and what each call of Bole in it reads. */
export function showCell(cell: SelectedCell, catalog: readonly Entry[], lookUp: LookUp): void {
  const parts: HTMLElement[] = [element("h2", {}, cell.name)];
  if (cell.becameDay) parts.unshift(element("p", { class: "caution" }, cell.becameDay));
  if (cell.formula) parts.push(element("p", { class: "formula" }, cell.formula));
  if (cell.spilledFrom) parts.push(element("p", { class: "quiet" }, `Part of the answer of ${cell.spilledFrom}.`));
  if (cell.answer) parts.push(element("p", { class: cell.formula ? "answer" : "content" }, cell.answer));
  if (cell.link) parts.push(linkButton(cell.link));
  if (cell.why) parts.push(element("p", { class: "why" }, cell.why));
  if (!cell.formula && !cell.answer) parts.push(element("p", { class: "quiet" }, cell.typing ? TYPING : EMPTY));
  if (cell.endView) parts.push(element("div", { class: "pane" }, shownDrawing(cell.endView)));
  const told = { address: cell.name, formula: cell.formula, value: cell.value, format: cell.format };
  const warning = dateWarning(told);
  if (warning) parts.push(element("p", { class: "caution" }, warning));
  const calls = element("div", { class: "pane" });
  parts.push(calls);
  byId("cell").replaceChildren(...parts);
  void callsShown(told, catalog, lookUp).then((shown) => calls.replaceChildren(...shown));
}

const EMPTY = "An empty cell. Type =BOLE. to see the functions.";
const TYPING = "Enter puts what you type into the cell; Esc leaves it as it was.";

function linkButton({ sheet, follow }: NonNullable<SelectedCell["link"]>): HTMLElement {
  const button = element("button", { class: "link" }, `Go to the sheet ${sheet}`);
  button.addEventListener("click", follow);
  return button;
}
