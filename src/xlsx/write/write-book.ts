import { columnLetters, fixedRangeOf, rangeOf, sheetPrefix } from "../../formula/addresses";
import { escaped } from "../escaped";
import { HEADING, MAIN, OFFICE } from "../namespaces";
import { escapedCellText } from "../xml";
import { packedFile, zipOf } from "../zip";
import type { Book, CellStyle, Sheet, Table } from "./book";
import { chartPart } from "./chart-part";
import { drawingPart } from "./drawing-part";
import { DYNAMIC_ARRAY_METADATA } from "./dynamic-arrays";
import { sheetPart } from "./sheet-part";
import { styleList } from "./style-list";
import { valuesOn } from "./chart-values";

const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const DRAWING = "application/vnd.openxmlformats-officedocument.drawing+xml";
const CHART = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

/** Parts by their name, and what each holds. */
type Parts = Map<string, { xml: string; type: string }>;

/** A workbook's bytes. The same book gives the same bytes. */
export function writeBook(book: Book, usual: CellStyle): Uint8Array {
  const styles = styleList(usual);
  const texts = textList();
  const parts: Parts = new Map();
  book.sheets.forEach((sheet, at) => addSheet(parts, book, sheet, at, styles, texts));
  parts.set("xl/workbook.xml", { xml: workbookXml(book), type: `${SPREADSHEET}.sheet.main+xml` });
  parts.set("xl/_rels/workbook.xml.rels", relations(workbookRelations(book)));
  parts.set("xl/styles.xml", { xml: styles.xml(), type: `${SPREADSHEET}.styles+xml` });
  parts.set("xl/sharedStrings.xml", { xml: texts.xml(), type: `${SPREADSHEET}.sharedStrings+xml` });
  parts.set("xl/metadata.xml", { xml: DYNAMIC_ARRAY_METADATA, type: `${SPREADSHEET}.sheetMetadata+xml` });
  parts.set("docProps/core.xml", {
    xml: coreXml(book),
    type: "application/vnd.openxmlformats-package.core-properties+xml",
  });
  parts.set(
    "_rels/.rels",
    relations([
      ["rId1", `${OFFICE}/officeDocument`, "xl/workbook.xml"],
      ["rId2", `${PACKAGE}/relationships/metadata/core-properties`, "docProps/core.xml"],
    ]),
  );
  const files = [...parts].sort(([a], [b]) => (a < b ? -1 : 1));
  const named: [string, string][] = [
    ["[Content_Types].xml", contentTypes(parts)],
    ...files.map(([name, { xml }]): [string, string] => [name, xml]),
  ];
  return zipOf(named.map(([name, xml]) => packedFile(name, new TextEncoder().encode(xml), book.at)));
}

function addSheet(
  parts: Parts,
  book: Book,
  sheet: Sheet,
  at: number,
  styles: ReturnType<typeof styleList>,
  texts: ReturnType<typeof textList>,
): void {
  const tablesBefore = book.sheets.slice(0, at).reduce((sum, { tables }) => sum + tables.length, 0);
  const own: [string, string, string][] = sheet.tables.map((table, i) => {
    const number = tablesBefore + i + 1;
    parts.set(`xl/tables/table${number}.xml`, { xml: tableXml(table, number), type: `${SPREADSHEET}.table+xml` });
    return [`rId${i + 1}`, `${OFFICE}/table`, `../tables/table${number}.xml`];
  });
  const tables = own.map(([id]) => id);
  const drawing = sheet.charts.length > 0 ? `rId${own.length + 1}` : undefined;
  if (drawing) own.push([drawing, `${OFFICE}/drawing`, `../${addDrawing(parts, book, sheet)}`]);
  const xml = sheetPart(sheet, styles, texts, { tables, ...(drawing ? { drawing } : {}) });
  parts.set(`xl/worksheets/sheet${at + 1}.xml`, { xml, type: `${SPREADSHEET}.worksheet+xml` });
  if (own.length > 0) parts.set(`xl/worksheets/_rels/sheet${at + 1}.xml.rels`, relations(own));
}

/** One drawing a sheet, one part a chart. Answers the drawing's name within the workbook's folder. */
function addDrawing(parts: Parts, book: Book, sheet: Sheet): string {
  const charts = sheet.charts.map((chart, at): [string, string, string] => {
    const name = freeName(parts, "charts/chart");
    const holding = book.sheets.find((one) => one.name === chart.data);
    if (!holding) throw new Error(`A chart on ${sheet.name} takes its values from ${chart.data}, which is not there`);
    const data = { sheet: chart.data, valuesOf: valuesOn(holding) };
    parts.set(`xl/${name}`, { xml: chartPart(chart, data), type: CHART });
    return [`rId${at + 1}`, `${OFFICE}/chart`, `../${name}`];
  });
  const name = freeName(parts, "drawings/drawing");
  parts.set(`xl/${name}`, { xml: drawingPart(sheet.charts), type: DRAWING });
  parts.set(`xl/${name.replace("drawings/", "drawings/_rels/")}.rels`, relations(charts));
  return name;
}

/** The first number that no part of this kind has yet. */
function freeName(parts: Parts, kind: string): string {
  let number = 1;
  while (parts.has(`xl/${kind}${number}.xml`)) number++;
  return `${kind}${number}.xml`;
}

function tableXml({ name, block, columns, filters }: Table, id: number): string {
  const listed = columns.map((column, at) => {
    const open = `<tableColumn id="${at + 1}" name="${escaped(column.name)}"`;
    const array = column.array ? ` array="1"` : "";
    return column.formula
      ? `${open}><calculatedColumnFormula${array}>${escaped(column.formula)}</calculatedColumnFormula></tableColumn>`
      : `${open}/>`;
  });
  const ref = rangeOf(block);
  // With filter buttons shown or hidden the table is the same; without the element there are none to show.
  const filter = filters ? `<autoFilter ref="${ref}"/>` : "";
  return `${HEADING}<table xmlns="${MAIN}" id="${id}" name="${name}" displayName="${name}" ref="${ref}" totalsRowShown="0">${filter}<tableColumns count="${columns.length}">${listed.join("")}</tableColumns><tableStyleInfo showFirstColumn="0" showLastColumn="0" showRowStripes="0" showColumnStripes="0"/></table>`;
}

/**
 * Excel works a file out anew on opening when an older Excel saved it last; a function whose add-in is missing would
 * then lose its saved value. 191029 stands in files of present versions.
 */
const CALCULATED_BY = 191029;

function workbookXml(book: Book): string {
  const sheets = book.sheets.map(
    ({ name }, at) => `<sheet name="${escaped(name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`,
  );
  const given = book.names.map(
    ({ name, refersTo }) => `<definedName name="${name}">${escaped(refersTo)}</definedName>`,
  );
  const printing = book.sheets.flatMap(printNames);
  const names = [...printing, ...given].join("");
  return (
    `${HEADING}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr/><bookViews><workbookView/></bookViews>` +
    `<sheets>${sheets.join("")}</sheets>${names ? `<definedNames>${names}</definedNames>` : ""}` +
    `<calcPr calcId="${CALCULATED_BY}"/></workbook>`
  );
}

/** What is printed of a sheet, and which rows again on every page, stand among the names. */
function printNames({ name, print: { area, repeated, repeatedColumns } }: Sheet, at: number): string[] {
  const own = (title: string, refersTo: string) =>
    `<definedName name="_xlnm.${title}" localSheetId="${at}">${escaped(refersTo)}</definedName>`;
  const titles = [
    ...(repeatedColumns ? [`$${columnLetters(repeatedColumns.first)}:$${columnLetters(repeatedColumns.last)}`] : []),
    ...(repeated ? [`$${repeated.first + 1}:$${repeated.last + 1}`] : []),
  ];
  return [
    ...(area ? [own("Print_Area", sheetPrefix(name) + fixedRangeOf(area))] : []),
    ...(titles.length > 0 ? [own("Print_Titles", titles.map((cells) => sheetPrefix(name) + cells).join(","))] : []),
  ];
}

function workbookRelations({ sheets }: Book): [string, string, string][] {
  const others = ["styles", "sharedStrings"].map((type, at): [string, string, string] => [
    `rId${sheets.length + at + 1}`,
    `${OFFICE}/${type}`,
    `${type}.xml`,
  ]);
  return [
    ...sheets.map((_, at): [string, string, string] => [
      `rId${at + 1}`,
      `${OFFICE}/worksheet`,
      `worksheets/sheet${at + 1}.xml`,
    ]),
    ...others,
    ["rIdMetadata", `${OFFICE}/sheetMetadata`, "metadata.xml"],
  ];
}

function coreXml({ title, author, at }: Book): string {
  const hour = (name: string) =>
    `<dcterms:${name} xsi:type="dcterms:W3CDTF">${at.toISOString().slice(0, 19)}Z</dcterms:${name}>`;
  return (
    `${HEADING}<cp:coreProperties xmlns:cp="${PACKAGE}/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">` +
    `<dc:title>${escaped(title)}</dc:title><dc:creator>${escaped(author)}</dc:creator><cp:lastModifiedBy>${escaped(author)}</cp:lastModifiedBy>` +
    `${hour("created")}${hour("modified")}</cp:coreProperties>`
  );
}

const RELATIONS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";

function relations(list: readonly [id: string, type: string, target: string][]): { xml: string; type: string } {
  const each = list.map(
    ([id, type, target]) => `<Relationship Id="${id}" Type="${type}" Target="${escaped(target)}"/>`,
  );
  const xml = `${HEADING}<Relationships xmlns="${PACKAGE}/relationships">${each.join("")}</Relationships>`;
  return { xml, type: RELATIONS_TYPE };
}

function contentTypes(parts: Parts): string {
  const overrides = [...parts]
    .filter(([, { type }]) => type !== RELATIONS_TYPE)
    .map(([name, { type }]) => `<Override PartName="/${name}" ContentType="${type}"/>`);
  return (
    `${HEADING}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="${RELATIONS_TYPE}"/>` +
    `<Default Extension="xml" ContentType="application/xml"/>${overrides.join("")}</Types>`
  );
}

/** The texts that cells share, each once and in the order in which they come. */
function textList() {
  const known = new Map<string, number>();
  const numberOf = (text: string): number => {
    if (!known.has(text)) known.set(text, known.size);
    return known.get(text)!;
  };
  const spaced = (text: string) => (/^\s|\s$|\n/.test(text) ? ` xml:space="preserve"` : "");
  const xml = () =>
    `${HEADING}<sst xmlns="${MAIN}" uniqueCount="${known.size}">${[...known.keys()].map((text) => `<si><t${spaced(text)}>${escapedCellText(text)}</t></si>`).join("")}</sst>`;
  return { numberOf, xml };
}
