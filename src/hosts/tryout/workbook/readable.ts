import type JSZip from "jszip";

/**
 * The file without what the reading library stumbles over and calculating does not need: the formula that a table's
 * column fills into new rows (every table with a computed column has one, and the library loses count of the columns).
 */
export async function readable(zip: JSZip): Promise<Buffer> {
  for (const part of zip.file(/^xl\/tables\/[^/]+\.xml$/)) {
    const xml = await part.async("string");
    zip.file(part.name, xml.replace(/<(calculatedColumnFormula|totalsRowFormula)\b[^>]*>[\s\S]*?<\/\1>/g, ""));
  }
  return zip.generateAsync({ type: "nodebuffer" });
}
