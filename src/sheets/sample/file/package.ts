import type { ColumnFormula, Draft } from "../draft";
import { addCharts } from "./add-charts";
import { addPart, addRelation, edit, editSheets, type Parts, placeBefore, unzipped, zipped } from "./parts";
import { DYNAMIC_ARRAY_METADATA, markSpills, METADATA_CONTENT_TYPE, METADATA_RELATIONSHIP } from "./spilling";
import { escaped } from "../../../xlsx/escaped";
import { replaceOnce } from "./xml";

/** The workbook's bytes: what the library writes, and besides it spilled formulas, column formulas and charts. */
export async function packWorkbook(draft: Draft): Promise<Uint8Array> {
  const parts = await unzipped((await draft.book.xlsx.writeBuffer()) as ArrayBuffer);
  edit(parts, "xl/workbook.xml", calculatedByThisExcel);
  plainLinks(parts);
  editSheets(parts, allowNumbersAsText);
  addSpills(parts);
  for (const path of parts.keys()) if (/^xl\/tables\//.test(path)) addColumnFormulas(parts, path, draft.columnFormulas);
  addCharts(parts, draft);
  return zipped(parts);
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
  editSheets(parts, (xml) => xml.replace(/(<hyperlink ref="[A-Z]+\d+") r:id="\w+" location="#/g, '$1 location="'));
  for (const path of parts.keys())
    if (/^xl\/worksheets\/_rels\//.test(path))
      edit(parts, path, (xml) => xml.replace(/<Relationship [^>]*\/hyperlink"[^>]*\/>/g, ""));
}

/** Keeps Excel's green corner off cells where a number is text on purpose, such as 12% or a setting. */
function allowNumbersAsText(sheetXml: string): string {
  const ignored = '<ignoredErrors><ignoredError sqref="A1:AZ2000" numberStoredAsText="1"/></ignoredErrors>';
  return placeBefore(sheetXml, "<ignoredErrors>", ignored);
}

function addSpills(parts: Parts): void {
  editSheets(parts, markSpills);
  addPart(parts, "xl/metadata.xml", METADATA_CONTENT_TYPE, DYNAMIC_ARRAY_METADATA);
  addRelation(parts, "xl/workbook.xml", "rIdMetadata", METADATA_RELATIONSHIP, "metadata.xml");
}

/** With its formula kept in the table, a column fills itself when the sawyer adds a row. */
function addColumnFormulas(parts: Parts, path: string, formulas: readonly ColumnFormula[]): void {
  const table = / displayName="([^"]+)"/.exec(parts.get(path)!)![1];
  for (const { column, formula } of formulas.filter((one) => one.table === table)) {
    const end = new RegExp(`(?<=<tableColumn [^>]*name="${escaped(column)}"[^>]*)/>`);
    const filled = `><calculatedColumnFormula>${escaped(formula)}</calculatedColumnFormula></tableColumn>`;
    edit(parts, path, (xml) => replaceOnce(xml, end, filled));
  }
}
