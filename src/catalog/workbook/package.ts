import type { Worksheet } from "exceljs";
import JSZip from "jszip";
import { chartXml, drawingXml, type NumbersOf } from "./chart";
import type { Chart, Draft } from "./draft";
import { DYNAMIC_ARRAY_METADATA, markSpills, METADATA_CONTENT_TYPE, METADATA_RELATIONSHIP } from "./spilling";
import { replaceOnce, XML_HEAD, xmlText } from "./xml";

const REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const RELS_NS = "http://schemas.openxmlformats.org/package/2006/relationships";
/** The earliest date a zip entry can hold, so that the same content gives the same bytes. */
const FIXED_DATE = new Date(Date.UTC(1980, 0, 1));

/** The workbook's bytes: what the library writes, and besides it spilled formulas, column formulas and charts. */
export async function packWorkbook(draft: Draft): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync((await draft.book.xlsx.writeBuffer()) as ArrayBuffer);
  const parts = new Map<string, string>();
  for (const [path, file] of Object.entries(zip.files)) if (!file.dir) parts.set(path, await file.async("string"));

  edit(parts, "xl/workbook.xml", calculatedByThisExcel);
  plainLinks(parts);
  allowNumbersAsText(parts);
  addSpills(parts);
  addColumnFormulas(parts, draft);
  draft.charts.forEach((chart, i) => addChart(parts, draft, chart, i + 1));
  return zipped(parts);
}

type Parts = Map<string, string>;

function edit(parts: Parts, path: string, change: (xml: string) => string): void {
  const xml = parts.get(path);
  if (xml === undefined) throw new Error(`The workbook has no part ${path}`);
  parts.set(path, change(xml));
}

/**
 * Excel works a file out anew on opening when an older Excel saved it last; a function whose add-in is missing would
 * then lose its saved value. 191029 stands in files of present versions.
 */
function calculatedByThisExcel(workbookXml: string): string {
  return replaceOnce(workbookXml, /calcId="\d+"/, 'calcId="191029"');
}

/** The library writes a link to another sheet as one to the outside as well. */
function plainLinks(parts: Parts): void {
  for (const path of parts.keys()) {
    if (/^xl\/worksheets\/sheet\d+\.xml$/.test(path))
      edit(parts, path, (xml) => xml.replace(/(<hyperlink ref="[A-Z]+\d+") r:id="\w+" location="#/g, '$1 location="'));
    if (/^xl\/worksheets\/_rels\//.test(path))
      edit(parts, path, (xml) => xml.replace(/<Relationship [^>]*\/hyperlink"[^>]*\/>/g, ""));
  }
}

/** Keeps Excel's green corner off cells where a number is text on purpose, such as 12% or a setting. */
function allowNumbersAsText(parts: Parts): void {
  for (const path of parts.keys())
    if (/^xl\/worksheets\/sheet\d+\.xml$/.test(path))
      edit(parts, path, (xml) =>
        placeBefore(
          xml,
          AFTER_PAGE_SETUP,
          '<ignoredErrors><ignoredError sqref="A1:AZ2000" numberStoredAsText="1"/></ignoredErrors>',
        ),
      );
}

/** What may follow the page set-up in a sheet's part, in order. */
const AFTER_PAGE_SETUP = ["<drawing ", "<legacyDrawing ", "<tableParts ", "</worksheet>"];

function placeBefore(sheetXml: string, tags: readonly string[], what: string): string {
  const next = tags.find((tag) => sheetXml.includes(tag))!;
  return replaceOnce(sheetXml, next, `${what}${next}`);
}

function addSpills(parts: Parts): void {
  for (const path of parts.keys()) if (/^xl\/worksheets\/sheet\d+\.xml$/.test(path)) edit(parts, path, markSpills);
  parts.set("xl/metadata.xml", DYNAMIC_ARRAY_METADATA);
  addContentType(parts, "/xl/metadata.xml", METADATA_CONTENT_TYPE);
  addRelationship(parts, "xl/_rels/workbook.xml.rels", METADATA_RELATIONSHIP, "metadata.xml");
}

/** With its formula kept in the table, a column fills itself when the sawyer adds a row. */
function addColumnFormulas(parts: Parts, draft: Draft): void {
  for (const [path, xml] of parts) {
    const table = /^xl\/tables\//.test(path) && / displayName="([^"]+)"/.exec(xml)?.[1];
    for (const column of draft.columnFormulas.filter((one) => one.table === table))
      edit(parts, path, (before) =>
        replaceOnce(
          before,
          new RegExp(`(?<=<tableColumn [^>]*name="${xmlText(column.column)}"[^>]*)/>`),
          `><calculatedColumnFormula>${xmlText(column.formula)}</calculatedColumnFormula></tableColumn>`,
        ),
      );
  }
}

function addChart(parts: Parts, draft: Draft, chart: Chart, number: number): void {
  const sheet = draft.book.getWorksheet(chart.sheet)!;
  const sheetPath = `xl/worksheets/sheet${draft.book.worksheets.indexOf(sheet) + 1}.xml`;
  const relsPath = sheetPath.replace("worksheets/", "worksheets/_rels/") + ".rels";
  if (!parts.has(relsPath)) parts.set(relsPath, `${XML_HEAD}<Relationships xmlns="${RELS_NS}"></Relationships>`);
  const id = addRelationship(parts, relsPath, `${REL}/drawing`, `../drawings/drawing${number}.xml`);
  edit(parts, sheetPath, (xml) => placeBefore(xml, AFTER_PAGE_SETUP.slice(1), `<drawing r:id="${id}"/>`));

  parts.set(`xl/drawings/drawing${number}.xml`, drawingXml(chart));
  parts.set(
    `xl/drawings/_rels/drawing${number}.xml.rels`,
    `${XML_HEAD}<Relationships xmlns="${RELS_NS}"><Relationship Id="rId1" Type="${REL}/chart" Target="../charts/chart${number}.xml"/></Relationships>`,
  );
  parts.set(`xl/charts/chart${number}.xml`, chartXml(chart, numbersOn(sheet)));
  addContentType(
    parts,
    `/xl/drawings/drawing${number}.xml`,
    "application/vnd.openxmlformats-officedocument.drawing+xml",
  );
  addContentType(
    parts,
    `/xl/charts/chart${number}.xml`,
    "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
  );
}

function numbersOn(sheet: Worksheet): NumbersOf {
  return (range) => {
    const [first, last] = range.split(":").map((address) => sheet.getCell(address));
    const found: (number | undefined)[] = [];
    for (let row = Number(first!.row); row <= Number(last!.row); row++) {
      const cell = sheet.getCell(row, Number(first!.col));
      const value = cell.result ?? cell.value;
      found.push(typeof value === "number" ? value : undefined);
    }
    return found;
  };
}

function addContentType(parts: Parts, part: string, type: string): void {
  edit(parts, "[Content_Types].xml", (xml) =>
    replaceOnce(xml, "</Types>", `<Override PartName="${part}" ContentType="${type}"/></Types>`),
  );
}

function addRelationship(parts: Parts, path: string, type: string, target: string): string {
  const id = `rIdBole${target.replace(/\W/g, "")}`;
  edit(parts, path, (xml) =>
    replaceOnce(
      xml,
      "</Relationships>",
      `<Relationship Id="${id}" Type="${type}" Target="${target}"/></Relationships>`,
    ),
  );
  return id;
}

async function zipped(parts: Parts): Promise<Uint8Array> {
  const zip = new JSZip();
  for (const path of [...parts.keys()].sort(contentTypesFirst))
    zip.file(path, parts.get(path)!, { date: FIXED_DATE, createFolders: false });
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE", compressionOptions: { level: 9 } });
}

function contentTypesFirst(a: string, b: string): number {
  return Number(b.startsWith("[Content")) - Number(a.startsWith("[Content")) || (a < b ? -1 : 1);
}
