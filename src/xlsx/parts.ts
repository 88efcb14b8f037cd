import type { DefinedName } from "../formula/defined-name";
import type { Table } from "../formula/tables";
import { blockOf } from "../formula/addresses";
import { readNames } from "./defined-names";
import type { Package } from "./package";
import { Refused } from "./refused";
import { contentTypeOf, relationsOf, type Relation } from "./relations";
import { readSharedTexts, readSheet, type SheetXml } from "./sheet-cells";
import { attribute, elements } from "./xml";

/** A sheet of cells in a workbook file. */
export interface SheetPart {
  name: string;
  part: string;
  hidden: boolean;
  xml: SheetXml;
  tableParts: string[];
}

/** What a workbook file holds, as far as calculating asks for it. */
export interface WorkbookParts {
  file: Package;
  part: string;
  macros: boolean;
  /** Whether its days are counted from 1904, as on old Macs, and not from 1900. */
  since1904: boolean;
  sheets: SheetPart[];
  /** Every sheet in the order of the file, those with only a chart on them too: sheet-bound names count them all. */
  sheetNames: string[];
  tables: Table[];
  names: DefinedName[];
}

const WORKBOOK = /sheet\.main\+xml$|sheet\.macroEnabled\.main\+xml$/i;
const OTHER_FILES: [RegExp, string][] = [
  [/template/i, "it is a template: make a workbook from it first"],
  [/sheet\.binary/i, "it is a binary workbook (.xlsb): save it as .xlsx in Excel"],
  [/wordprocessingml|presentationml/i, "it is a text or a presentation, not a workbook"],
];

/** Reads every sheet's cells, the tables and the names of a workbook file. */
export function readParts(file: Package): WorkbookParts {
  try {
    return read(file);
  } catch (fault) {
    if (fault instanceof Refused) throw fault;
    throw new Refused(`it is damaged: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
}

function read(file: Package): WorkbookParts {
  const part = workbookPart(file);
  const type = contentTypeOf(file, part) ?? "";
  if (!WORKBOOK.test(type))
    throw new Refused(OTHER_FILES.find(([kind]) => kind.test(type))?.[1] ?? "it is not an .xlsx workbook");
  const workbookXml = file.text(part);
  const relations = relationsOf(file, part);
  const texts = relations.find((one) => one.type === "sharedStrings")?.target;
  const sharedTexts = texts && file.has(texts) ? readSharedTexts(file.text(texts)) : [];
  const listed = elements(workbookXml, "sheet").filter(({ depth }) => depth === 2);
  mustFitInMemory(
    relations
      .filter(({ type, target }) => type === "worksheet" && file.has(target))
      .map(({ target }) => file.size(target)),
  );
  const sheets = listed.flatMap(({ attributes }) => sheetOf(file, attributes, relations, sharedTexts));
  return {
    file,
    part,
    macros: /macroEnabled/i.test(type),
    since1904: elements(workbookXml, "workbookPr").some(({ attributes }) => isOn(attribute(attributes, "date1904"))),
    sheets,
    sheetNames: listed.map(({ attributes }) => attribute(attributes, "name") ?? ""),
    tables: sheets.flatMap(({ name, tableParts }) => tableParts.map((one) => readTable(file.text(one), name))),
    names: readNames(workbookXml),
  };
}

/** A cell takes some sixteen times as much memory as its letters in the file. */
const MOST_SHEET_MEGABYTES = 200;
const MEGABYTE = 1024 * 1024;

/** Says so before the work begins. */
function mustFitInMemory(sizes: readonly number[]): void {
  const megabytes = Math.ceil(sizes.reduce((sum, size) => sum + size, 0) / MEGABYTE);
  if (megabytes > MOST_SHEET_MEGABYTES)
    throw new Refused(`its sheets unpack to ${megabytes} MB; the limit is ${MOST_SHEET_MEGABYTES} MB`);
}

function workbookPart(file: Package): string {
  if (!file.has("[Content_Types].xml") || !file.has("_rels/.rels"))
    throw new Refused("it is a zip, but not an .xlsx workbook");
  const main = relationsOf(file, "").find(({ type }) => type === "officeDocument");
  if (!main || !file.has(main.target)) throw new Refused("it is a zip, but not an .xlsx workbook");
  return main.target;
}

function sheetOf(file: Package, attributes: string, relations: Relation[], texts: readonly string[]): SheetPart[] {
  const relation = relations.find(({ id }) => id === attribute(attributes, "id"));
  if (relation?.type !== "worksheet") return [];
  const part = relation.target;
  const tableParts = relationsOf(file, part).flatMap(({ type, target }) => (type === "table" ? [target] : []));
  const hidden = (attribute(attributes, "state") ?? "visible") !== "visible";
  const name = attribute(attributes, "name") ?? "";
  return [{ name, part, hidden, xml: readSheet(file.text(part), texts), tableParts }];
}

function readTable(xml: string, sheet: string): Table {
  const [table] = elements(xml, "table");
  if (!table) throw new Refused("one of its tables has no description");
  const columns = elements(xml, "tableColumn").map(({ attributes }) => attribute(attributes, "name") ?? "");
  return {
    name: attribute(table.attributes, "displayName") ?? attribute(table.attributes, "name") ?? "",
    sheet,
    columns,
    block: blockOf(attribute(table.attributes, "ref") ?? "A1"),
    headings: attribute(table.attributes, "headerRowCount") !== "0",
    totals: Number(attribute(table.attributes, "totalsRowCount") ?? 0) > 0,
  };
}

/** A switch as XML writes it. */
export function isOn(value: string | undefined): boolean {
  return value === "1" || value === "true";
}
