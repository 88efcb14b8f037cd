import type { DefinedName } from "../formula/defined-name";
import { attribute, elements, unescaped } from "./xml";

/** The names of a workbook in the order of the file, Excel's own hidden ones too. */
export function readNames(workbookXml: string): DefinedName[] {
  return named(workbookXml).map(({ name }) => name);
}

/** Those that a person gave. */
export function readOpenNames(workbookXml: string): DefinedName[] {
  return named(workbookXml).flatMap(({ name, hidden }) => (hidden ? [] : [name]));
}

function named(workbookXml: string): { name: DefinedName; hidden: boolean }[] {
  return elements(workbookXml, "definedName").flatMap(({ attributes, inside }) => {
    const [name, comment, sheet] = ["name", "comment", "localSheetId"].map((one) => attribute(attributes, one));
    if (!name) return [];
    const known = { ...(comment ? { comment } : {}), ...(sheet === undefined ? {} : { sheet: Number(sheet) }) };
    const hidden = name.startsWith("_xlnm.") || attribute(attributes, "hidden") === "1";
    return [{ name: { name, refersTo: unescaped(inside), ...known }, hidden }];
  });
}
