import type { Entry } from "../../catalog/entry";
import { cutPlanPart } from "./cut-plan-part";
import { element } from "./element";
import { formulasPart } from "./formulas-part";
import type { SheetHost } from "./sheet-host";
import { sheetsPart } from "./sheets-part";
import { SHOWN } from "./shown";
import { thisCellPart } from "./this-cell-part";

/** The pane: its parts, one of them in sight, and the line that says what a button did. */
export function pane(catalog: readonly Entry[], host: SheetHost): HTMLElement[] {
  const parts = [
    { name: "Formulas", section: formulasPart(catalog, host) },
    ...(host.chosenCell ? [{ name: "This cell", section: thisCellPart(catalog, host) }] : []),
    { name: "Sheets", section: sheetsPart(host) },
    { name: "Cut plan", section: cutPlanPart(host) },
  ];
  const buttons = parts.map(({ name }) => element("button", { type: "button" }, name));
  const said = element("p", { id: "said", role: "status" });
  const show = (shown: number) => {
    said.textContent = "";
    parts.forEach(({ section }, i) => (section.hidden = i !== shown));
    parts[shown]!.section.dispatchEvent(new Event(SHOWN));
    buttons.forEach((button, i) => button.setAttribute("aria-current", String(i === shown)));
  };
  buttons.forEach((button, i) => button.addEventListener("click", () => show(i)));
  show(0);
  return [element("nav", { "aria-label": "Parts of Bole" }, ...buttons), ...parts.map(({ section }) => section), said];
}
