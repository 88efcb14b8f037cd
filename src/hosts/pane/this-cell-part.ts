import type { Entry } from "../../catalog/entry";
import { button } from "./button";
import { element } from "./element";
import { followChoice } from "./follow-choice";
import type { SheetHost } from "./sheet-host";
import { SHOWN } from "./shown";
import { callsShown, dateWarning, type ChosenCell } from "./this-cell";

/** The chosen cell, told: what each call of Bole in it reads and answers. It follows the choice where the sheet says so. */
export function thisCellPart(catalog: readonly Entry[], host: SheetHost): HTMLElement {
  const told = element("div", { id: "this-cell", "aria-live": "polite" });
  let follows = false;
  let calls: HTMLElement[] = [];
  const tell = async (): Promise<string> => {
    // Not before it is asked for: a pane is drawn before the spreadsheet can be spoken to.
    if (!follows) followChoice(host, told, () => void quietly());
    follows = true;
    const cell = await host.chosenCell!();
    // An empty cell is chosen for the working of the cell before: that stays, with its button.
    const isFree = cell.formula === "" && (cell.value === "" || cell.value === null || cell.value === undefined);
    if (isFree && calls.some((call) => call.querySelector(".table[aria-label=Working]"))) {
      told.replaceChildren(element("h2", {}, cell.address), ...calls);
      return "";
    }
    calls = await callsShown(cell, catalog, (piece) => host.cellsOf!(piece, cell.address), host);
    told.replaceChildren(...toldOf(cell, calls));
    return "";
  };
  const quietly = () => tell().catch(() => told.replaceChildren());
  const section = element(
    "section",
    { "aria-label": "This cell" },
    element("p", {}, "Choose a cell with a formula of Bole: what it reads, and what it answers."),
    button("Read the chosen cell", tell),
    told,
  );
  section.addEventListener(SHOWN, () => void quietly());
  return section;
}

function toldOf(cell: ChosenCell, calls: readonly HTMLElement[]): HTMLElement[] {
  const warning = dateWarning(cell);
  return [
    element("h2", {}, cell.address),
    ...(cell.formula ? [element("p", {}, element("code", {}, cell.formula))] : []),
    ...(warning ? [element("p", { class: "caution" }, warning)] : []),
    ...calls,
    ...(calls.length === 0 && !warning ? [element("p", {}, "This cell asks Bole nothing.")] : []),
  ];
}
