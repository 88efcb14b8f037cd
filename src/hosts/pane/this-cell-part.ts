import type { Entry } from "../../catalog/entry";
import { button } from "./button";
import { element } from "./element";
import type { SheetHost } from "./sheet-host";
import { SHOWN } from "./shown";
import { callsShown, dateWarning } from "./this-cell";

/** The chosen cell, told: what each call of Bole in it reads and answers. It follows the choice where the sheet says so. */
export function thisCellPart(catalog: readonly Entry[], host: SheetHost): HTMLElement {
  const told = element("div", { id: "this-cell", "aria-live": "polite" });
  let follows = false;
  const tell = async (): Promise<string> => {
    // Not before it is asked for: a pane is drawn before the spreadsheet can be spoken to.
    if (!follows) host.whenChosen?.(() => void quietly());
    follows = true;
    told.replaceChildren(...(await toldOf(catalog, host)));
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

async function toldOf(catalog: readonly Entry[], host: SheetHost): Promise<HTMLElement[]> {
  const cell = await host.chosenCell!();
  const warning = dateWarning(cell);
  const calls = await callsShown(cell, catalog, (piece) => host.cellsOf!(piece, cell.address));
  return [
    element("h2", {}, cell.address),
    ...(cell.formula ? [element("p", {}, element("code", {}, cell.formula))] : []),
    ...(warning ? [element("p", { class: "caution" }, warning)] : []),
    ...calls,
    ...(calls.length === 0 && !warning ? [element("p", {}, "This cell asks Bole nothing.")] : []),
  ];
}
