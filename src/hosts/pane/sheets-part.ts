import { READY_SHEETS } from "../../sheets/ready";
import type { TableSheet } from "../../sheets/definition";
import { button } from "./button";
import { element } from "./element";
import type { SheetHost } from "./sheet-host";

/** Sheets to add to the workbook, and the workbook to hand on. */
export function sheetsPart(host: SheetHost): HTMLElement {
  return element(
    "section",
    { "aria-label": "Sheets" },
    element("h2", {}, "Ready sheets"),
    element(
      "p",
      {},
      "Each goes into this workbook as a new sheet, with its formulas. Nothing that is there is touched.",
    ),
    element("ul", { class: "sheets" }, ...READY_SHEETS.map((sheet) => shownSheet(sheet, host))),
    ...(host.copyWithoutBole ? handingOn(host.copyWithoutBole) : []),
  );
}

/** A sheet with what it is for and the button that adds it. */
export function shownSheet(sheet: TableSheet, host: SheetHost): HTMLElement {
  const add = button("Add the sheet", () => host.addReadySheet(sheet), {
    "aria-label": `Add the sheet ${sheet.title}`,
  });
  return element("li", {}, element("h3", {}, sheet.title), element("p", {}, sheet.lead), add);
}

function handingOn(copy: () => Promise<string>): HTMLElement[] {
  return [
    element("h2", {}, "Handing it on"),
    element(
      "p",
      {},
      "Without Bole a workbook shows #NAME? once it is calculated anew. This makes copies of its sheets with values in " +
        "place of Bole's formulas, the formulas kept as notes. Your own sheets stay as they are.",
    ),
    button("Copy for someone without the add-in", copy),
  ];
}
