import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { packedFile, zipOf } from "../../../../src/xlsx/zip";

const HEADING = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

export interface Tiny {
  /** Sheet name to what stands between the tags of sheetData. */
  sheets: Record<string, string>;
  /** Further elements of the workbook part, such as definedNames. */
  workbook?: string;
  /** What stands behind sheetData on the first sheet. */
  after?: string;
  /** Further parts, and relations of the first sheet and of the workbook to them: [type, target]. */
  parts?: Record<string, string>;
  sheetRelations?: [string, string][];
  workbookRelations?: [string, string][];
  /** Further elements of the content types. */
  types?: string;
  macros?: boolean;
}

/** The smallest workbook that holds these cells, written part by part so that a test sees every sign of it. */
export function tiny(what: Tiny): Uint8Array {
  return zipped(tinyParts(what));
}

export function zipped(parts: Record<string, string>): Uint8Array {
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}

/** Parts in their bytes, packed by our own packer. */
export function zippedBytes(parts: Record<string, Uint8Array>): Uint8Array {
  return zipOf(Object.entries(parts).map(([name, content]) => packedFile(name, content, new Date("2026-01-01"))));
}

export function tinyParts(what: Tiny): Record<string, string> {
  const names = Object.keys(what.sheets);
  const kind = what.macros ? "application/vnd.ms-excel.sheet.macroEnabled.main+xml" : `${TYPE}.sheet.main+xml`;
  const overrides = names.map((_, at) => override(`xl/worksheets/sheet${at + 1}.xml`, `${TYPE}.worksheet+xml`));
  const defaults =
    `<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
    `<Default Extension="xml" ContentType="application/xml"/>`;
  const listed = names.map((name, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`);
  const own = names.map((_, at): [string, string] => ["worksheet", `worksheets/sheet${at + 1}.xml`]);
  const sheets = names.map((name, at) => [
    `xl/worksheets/sheet${at + 1}.xml`,
    `${HEADING}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetData>${what.sheets[name]}</sheetData>${at === 0 ? (what.after ?? "") : ""}</worksheet>`,
  ]);
  return {
    "[Content_Types].xml": `${HEADING}<Types xmlns="${PACKAGE}/content-types">${defaults}${override("xl/workbook.xml", kind)}${overrides.join("")}${what.types ?? ""}</Types>`,
    "_rels/.rels": relations([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `${HEADING}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${listed.join("")}</sheets>${what.workbook ?? ""}</workbook>`,
    "xl/_rels/workbook.xml.rels": relations([...own, ...(what.workbookRelations ?? [])]),
    ...(Object.fromEntries(sheets) as Record<string, string>),
    ...(what.sheetRelations ? { "xl/worksheets/_rels/sheet1.xml.rels": relations(what.sheetRelations) } : {}),
    ...what.parts,
  };
}

export function override(part: string, type: string): string {
  return `<Override PartName="/${part}" ContentType="${type}"/>`;
}

function relations(all: [string, string][]): string {
  const each = all.map(
    ([type, target], at) => `<Relationship Id="rId${at + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return `${HEADING}<Relationships xmlns="${PACKAGE}/relationships">${each.join("")}</Relationships>`;
}

/** The parts of a workbook file as text. */
export function partsOf(bytes: Uint8Array): Record<string, string> {
  const files = Object.entries(unzipSync(bytes)).filter(([name]) => !name.endsWith("/"));
  return Object.fromEntries(files.map(([name, content]) => [name, strFromU8(content, true)]));
}

/** Which parts are not in both files byte for byte. */
export function differences(before: Uint8Array, after: Uint8Array) {
  const [old, now] = [partsOf(before), partsOf(after)];
  return {
    changed: Object.keys(old)
      .filter((name) => name in now && now[name] !== old[name])
      .sort(),
    added: Object.keys(now)
      .filter((name) => !(name in old))
      .sort(),
    removed: Object.keys(old)
      .filter((name) => !(name in now))
      .sort(),
  };
}

/** A cell of a sheet's XML, its address in brackets. */
const CELL = /<c r="([A-Z]+\d+)"[^>/]*(?:\/>|>.*?<\/c>)/gs;

/** Every cell of a sheet by its address. */
export function cellsOf(sheetXml: string): Record<string, string> {
  return Object.fromEntries([...sheetXml.matchAll(CELL)].map(([all, address]) => [address, all]));
}

/** A cell's XML by its address; undefined where the sheet has none. */
export function cellXml(sheetXml: string, address: string): string | undefined {
  return cellsOf(sheetXml)[address];
}

/** A sheet's XML without its cells. */
export function roundCells(sheetXml: string): string {
  return sheetXml.replace(CELL, "");
}
