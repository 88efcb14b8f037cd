import type JSZip from "jszip";
import { attribute, elements, unescaped } from "../file/xml";

/** A name that the workbook gives to cells, with the remark its maker left beside it. */
export interface DefinedName {
  name: string;
  refersTo: string;
  comment?: string;
}

/** The names of a workbook in the order of the file; Excel's own hidden ones left out. */
export async function readNames(zip: JSZip): Promise<DefinedName[]> {
  const xml = (await zip.file("xl/workbook.xml")?.async("string")) ?? "";
  return elements(xml, "definedName").flatMap(({ attributes, inside }) => {
    const name = attribute(attributes, "name");
    if (!name || name.startsWith("_xlnm.") || attribute(attributes, "hidden") === "1") return [];
    const comment = attribute(attributes, "comment");
    return [{ name, refersTo: unescaped(inside), ...(comment ? { comment } : {}) }];
  });
}
