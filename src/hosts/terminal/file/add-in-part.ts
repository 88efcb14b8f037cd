import type { Package } from "../../../xlsx/package";
import { relationsOf, relationsPart, removePart } from "../../../xlsx/relations";
import { attribute, elements, patched } from "../../../xlsx/xml";

/**
 * Takes an add-in's own part out of a workbook: Excel keeps one for the pane of every add-in that was open, and offers to
 * load the add-in where the workbook is opened. The parts of others stay. (MS-OWEXML, 2.1 and 2.2.)
 */
export function withoutAddIn(file: Package, id: string): boolean {
  const panes = relationsOf(file, "").find(({ type }) => type === "webextensiontaskpanes")?.target;
  if (!panes || !file.has(panes)) return false;
  const all = relationsOf(file, panes).filter(({ type, target }) => type === "webextension" && file.has(target));
  const own = all.filter(({ target }) => isAddIn(file.text(target), id));
  if (own.length === 0) return false;
  for (const { id: relation, target } of own) {
    const xml = file.text(panes);
    const cuts = elements(xml, "taskpane")
      .filter(({ inside }) =>
        elements(inside, "webextensionref").some((one) => attribute(one.attributes, "id") === relation),
      )
      .map(({ start, after }) => ({ start, end: after, text: "" }));
    file.put(panes, patched(xml, cuts));
    removePart(file, target, panes);
  }
  if (own.length < all.length) return true;
  removePart(file, panes, "");
  if (file.has(relationsPart(panes))) file.remove(relationsPart(panes));
  return true;
}

function isAddIn(xml: string, id: string): boolean {
  return elements(xml, "reference").some(
    ({ attributes }) => attribute(attributes, "id")?.toLowerCase().replace(/[{}]/g, "") === id.toLowerCase(),
  );
}
