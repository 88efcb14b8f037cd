import JSZip from "jszip";
import { replaceOnce, XML_HEAD } from "./xml";

/** The parts of a workbook file by their path. */
export type Parts = Map<string, string>;

export const RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const RELATIONS_NS = "http://schemas.openxmlformats.org/package/2006/relationships";
/** The earliest date a zip entry can hold, so that the same content gives the same bytes. */
const FIXED_DATE = new Date(Date.UTC(1980, 0, 1));

export async function unzipped(bytes: ArrayBuffer): Promise<Parts> {
  const zip = await JSZip.loadAsync(bytes);
  const parts: Parts = new Map();
  for (const [path, file] of Object.entries(zip.files)) if (!file.dir) parts.set(path, await file.async("string"));
  return parts;
}

export async function zipped(parts: Parts): Promise<Uint8Array> {
  const zip = new JSZip();
  for (const path of [...parts.keys()].sort(contentTypesFirst))
    zip.file(path, parts.get(path)!, { date: FIXED_DATE, createFolders: false });
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE", compressionOptions: { level: 9 } });
}

function contentTypesFirst(a: string, b: string): number {
  return Number(b.startsWith("[Content")) - Number(a.startsWith("[Content")) || (a < b ? -1 : 1);
}

export function edit(parts: Parts, path: string, change: (xml: string) => string): void {
  const xml = parts.get(path);
  if (xml === undefined) throw new Error(`The workbook has no part ${path}`);
  parts.set(path, change(xml));
}

export function editSheets(parts: Parts, change: (xml: string) => string): void {
  for (const path of parts.keys()) if (/^xl\/worksheets\/sheet\d+\.xml$/.test(path)) edit(parts, path, change);
}

/** What may follow the page set-up in a sheet's part, in order. */
const AFTER_PAGE_SETUP = ["<ignoredErrors>", "<drawing ", "<legacyDrawing ", "<tableParts ", "</worksheet>"] as const;

/** Puts an element into a sheet's part where it belongs: in front of `first` or what comes after that. */
export function placeBefore(sheetXml: string, first: (typeof AFTER_PAGE_SETUP)[number], what: string): string {
  const next = AFTER_PAGE_SETUP.slice(AFTER_PAGE_SETUP.indexOf(first)).find((tag) => sheetXml.includes(tag))!;
  return replaceOnce(sheetXml, next, `${what}${next}`);
}

export function addPart(parts: Parts, path: string, contentType: string, xml: string): void {
  parts.set(path, xml);
  edit(parts, "[Content_Types].xml", (types) =>
    replaceOnce(types, "</Types>", `<Override PartName="/${path}" ContentType="${contentType}"/></Types>`),
  );
}

/** Relates a part to another, beginning its list of relations if it has none. */
export function addRelation(parts: Parts, from: string, id: string, type: string, target: string): void {
  const path = from.replace(/([^/]*)$/, "_rels/$1.rels");
  if (!parts.has(path)) parts.set(path, `${XML_HEAD}<Relationships xmlns="${RELATIONS_NS}"></Relationships>`);
  const relation = `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
  edit(parts, path, (xml) => replaceOnce(xml, "</Relationships>", `${relation}</Relationships>`));
}
