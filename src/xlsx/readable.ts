import type JSZip from "jszip";
import { mustBeASheet } from "./bounds";

/**
 * The file without what the reading library stumbles over and calculating does not need: the formula that a table's
 * column fills into new rows (every table with a computed column has one, and the library loses count of the columns),
 * and names and rules of input, of which the library makes an entry for every single cell, a million for one column.
 */
export async function readable(zip: JSZip): Promise<Buffer> {
  await rewritten(zip, /^xl\/tables\/[^/]+\.xml$/, (xml) =>
    withoutElements(xml, "calculatedColumnFormula|totalsRowFormula"),
  );
  await rewritten(zip, /^xl\/workbook\.xml$/, (xml) => withoutElements(xml, "definedNames"));
  await rewritten(zip, /^xl\/worksheets\/[^/]+\.xml$/, (xml, part) => {
    mustBeASheet(xml, part);
    return withoutElements(xml, "dataValidations");
  });
  return zip.generateAsync({ type: "nodebuffer" });
}

async function rewritten(zip: JSZip, parts: RegExp, edit: (xml: string, part: string) => string): Promise<void> {
  for (const part of zip.file(parts)) zip.file(part.name, edit(await part.async("string"), part.name));
}

function withoutElements(xml: string, names: string): string {
  return xml.replace(new RegExp(`<(${names})\\b[^>]*>[\\s\\S]*?</\\1\\s*>`, "g"), "");
}
