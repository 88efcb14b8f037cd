import type { Entry } from "../../catalog/entry";
import { cutPlanPart } from "./cut-plan-part";
import { element } from "./element";
import { formulasPart } from "./formulas-part";
import type { SheetHost } from "./sheet-host";
import { sheetsPart } from "./sheets-part";

/** The pane: three parts, one of them in sight, and the line that says what a button did. */
export function pane(catalog: readonly Entry[], host: SheetHost): HTMLElement[] {
  const parts = [
    { name: "Formulas", section: formulasPart(catalog, host) },
    { name: "Sheets", section: sheetsPart(host) },
    { name: "Cut plan", section: cutPlanPart(host) },
  ];
  const buttons = parts.map(({ name }) => element("button", { type: "button" }, name));
  const said = element("p", { id: "said", role: "status" });
  const show = (shown: number) => {
    said.textContent = "";
    parts.forEach(({ section }, i) => (section.hidden = i !== shown));
    buttons.forEach((button, i) => button.setAttribute("aria-current", String(i === shown)));
  };
  buttons.forEach((button, i) => button.addEventListener("click", () => show(i)));
  show(0);
  return [element("nav", { "aria-label": "Parts of Bole" }, ...buttons), ...parts.map(({ section }) => section), said];
}
