import type JSZip from "jszip";
import { attribute, elements } from "./xml";

/** By sheet, then by cell address: the sheet that a link within the workbook leads to. */
export type Links = ReadonlyMap<string, ReadonlyMap<string, string>>;

/** The links within a workbook; the reading library keeps only those to the outside. */
export async function readLinks(zip: JSZip, workbook: string): Promise<Links> {
  const relations = attributesOf(await text(zip, "xl/_rels/workbook.xml.rels"), "Relationship");
  const links = new Map<string, ReadonlyMap<string, string>>();
  for (const sheet of attributesOf(workbook, "sheet")) {
    const relation = relations.find((one) => attribute(one, "Id") === attribute(sheet, "id"));
    const target = (relation && attribute(relation, "Target")) ?? "";
    const part = target.startsWith("/") ? target.slice(1) : `xl/${target}`;
    const found = attributesOf(await text(zip, part), "hyperlink").flatMap((link) => {
      const [cell, location] = [attribute(link, "ref"), attribute(link, "location")];
      const leadsTo = location && sheetOf(location);
      return cell && leadsTo ? [[cell, leadsTo] as const] : [];
    });
    links.set(attribute(sheet, "name") ?? "", new Map(found));
  }
  return links;
}

/** `'Log book'!A1` leads to Log book. */
function sheetOf(location: string): string | undefined {
  const found = /^#?(?:'((?:[^']|'')+)'|([\w.]+))!/.exec(location);
  return (found?.[1] ?? found?.[2])?.replace(/''/g, "'");
}

/** The attributes of every element of one name. */
function attributesOf(xml: string, name: string): string[] {
  return elements(xml, name).map(({ attributes }) => attributes);
}

async function text(zip: JSZip, part: string): Promise<string> {
  return (await zip.file(part)?.async("string")) ?? "";
}
