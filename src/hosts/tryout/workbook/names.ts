import type JSZip from "jszip";

/** A name that the workbook gives to cells, with the remark its maker left beside it. */
export interface DefinedName {
  name: string;
  refersTo: string;
  comment?: string;
}

/** The names of a workbook in the order of the file; Excel's own hidden ones left out. */
export async function readNames(zip: JSZip): Promise<DefinedName[]> {
  const xml = (await zip.file("xl/workbook.xml")?.async("string")) ?? "";
  return [...xml.matchAll(/<definedName\b([^>]*)>([^<]*)<\/definedName>/g)].flatMap(
    ([, attributes = "", text = ""]) => {
      const name = attribute(attributes, "name");
      if (!name || name.startsWith("_xlnm.") || attribute(attributes, "hidden") === "1") return [];
      const comment = attribute(attributes, "comment");
      return [{ name, refersTo: plain(text), ...(comment ? { comment } : {}) }];
    },
  );
}

/** An attribute of a tag, as plain text. */
export function attribute(attributes: string, name: string): string | undefined {
  const found = new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(attributes)?.[1];
  return found === undefined ? undefined : plain(found);
}

const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function plain(xml: string): string {
  return xml.replace(/&(?:#(\d+)|#x([0-9a-f]+)|(\w+));/gi, (all, decimal?: string, hex?: string, entity = "") => {
    if (decimal) return String.fromCodePoint(Number(decimal));
    if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
    return ENTITIES[entity as string] ?? all;
  });
}
