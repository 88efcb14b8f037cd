import { wordsOf } from "./namespaces";
import type { Package } from "./package";
import { declarePart, freePart, relate, withLast } from "./relations";
import { attribute, elements, escaped, prefixOf } from "./xml";

const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

/** The names of all sheets of a workbook, those with only a chart on them too. */
export function sheetNamesOf(file: Package, workbookPart: string): string[] {
  return listed(file.text(workbookPart)).map(({ attributes }) => attribute(attributes, "name") ?? "");
}

/** Puts a sheet behind the last one. Its name must be free. */
export function addSheet(file: Package, workbookPart: string, name: string, sheetXml: string): void {
  const xml = file.text(workbookPart);
  const ids = listed(xml).map(({ attributes }) => Number(attribute(attributes, "sheetId") ?? 0));
  const folder = workbookPart.slice(0, workbookPart.lastIndexOf("/") + 1);
  const home = freePart(file, `${folder}worksheets/sheet`, ".xml");
  file.put(home, sheetXml);
  declarePart(file, home, SHEET_TYPE);
  const relation = relate(file, workbookPart, "worksheet", home);
  const id = Math.max(0, ...ids) + 1;
  const entry = `<${prefixOf(xml)}sheet xmlns:r="${wordsOf(file).office}" name="${escaped(name)}" sheetId="${id}" r:id="${relation}"/>`;
  file.put(workbookPart, withLast(xml, "sheets", entry));
}

function listed(workbookXml: string) {
  return elements(workbookXml, "sheet").filter(({ depth }) => depth === 2);
}
