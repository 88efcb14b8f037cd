import { hasSteps } from "../../catalog/about/working/working-table";
import { registry, type WorksheetFunction } from "../../functions/registry";
import { shownTable } from "./answer-shown";
import { button } from "./button";
import { element } from "./element";
import type { SheetHost } from "./sheet-host";
import { formulaOf, typed, withoutSheet, type Typed } from "./typed";

/** A call whose steps can be shown: its arguments as cells and as the pieces of a formula, and what it answers. */
export interface WorkedCall {
  name: string;
  cells: (unknown[][] | undefined)[];
  answer: ReturnType<WorksheetFunction>;
  parts: readonly Typed[];
}

/** Answers about Bole itself have no steps. */
const WITHOUT_STEPS = ["SOURCE", "WORKING", "VERSION"];

/** A button that shows the steps behind an answer and, where there is a sheet to put them on, one that puts them there. */
export function workingShown({ name, cells, parts, answer }: WorkedCall, host?: SheetHost): HTMLElement[] {
  if (WITHOUT_STEPS.includes(name) || !hasSteps(registry[name]!, cells, answer)) return [];
  const formulaAt = (sheetPrefix: string) => formulaOf("WORKING", withoutSheet([typed(name), ...parts], sheetPrefix));
  const isMovable = parts.every(({ kind }) => kind !== "expression");
  const steps = element("div", {});
  const put = () =>
    host && isMovable
      ? [
          element("p", { class: "quiet" }, "It needs room to the right and below: choose an empty cell for it first."),
          button("Put the working on the sheet", () => host.putIntoChosenCell(formulaAt)),
        ]
      : [];
  const show = button("Show the working", () => {
    const working = registry["WORKING"]!([[name]], ...cells);
    steps.replaceChildren(element("code", {}, formulaAt("")), shownTable(working, "Working"), ...put());
    return Promise.resolve("");
  });
  return [show, steps];
}
