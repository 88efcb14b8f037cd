import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";

export const SAMPLE = new URL("../../../assets/bole-sample.xlsx", import.meta.url);

/** Its copy for someone without the add-in. */
export const SAMPLE_VALUES = new URL("../../../assets/bole-sample-values.xlsx", import.meta.url);

/** The parts of a workbook file by their path. */
export function partsOf(bytes: Uint8Array = readFileSync(SAMPLE)): Map<string, string> {
  return new Map(Object.entries(unzipSync(bytes)).map(([name, content]) => [name, strFromU8(content)]));
}

/** A cell of a sheet's part as it is written. */
export interface WrittenCell {
  sheet: string;
  address: string;
  attributes: string;
  inner: string;
  /** With the file's escapes undone. */
  formula?: string;
  value?: string;
}

/** Every cell of every sheet, as the file holds it. */
export function writtenCells(parts: ReadonlyMap<string, string>): WrittenCell[] {
  return sheetPaths(parts).flatMap(({ sheet, path }) =>
    [...parts.get(path)!.matchAll(/<c r="([A-Z]+\d+)"([^>]*?)(?:\/>|>(.*?)<\/c>)/g)].map(
      ([, address = "", attributes = "", inner = ""]) => ({
        sheet,
        address,
        attributes,
        inner,
        formula: plain(/<f\b[^>]*>([^<]*)<\/f>/.exec(inner)?.[1]),
        value: plain(/<v>([^<]*)<\/v>/.exec(inner)?.[1]),
      }),
    ),
  );
}

/** The sheets in order, each with its part. */
export function sheetPaths(parts: ReadonlyMap<string, string>): { sheet: string; path: string }[] {
  const relations = parts.get("xl/_rels/workbook.xml.rels")!;
  return [...parts.get("xl/workbook.xml")!.matchAll(/<sheet [^>]*name="([^"]*)"[^>]*r:id="([^"]*)"/g)].map(
    ([, sheet = "", id = ""]) => {
      const relation = new RegExp(`<Relationship [^>]*Id="${id}"[^>]*>`).exec(relations)?.[0] ?? "";
      return { sheet: plain(sheet)!, path: `xl/${/Target="([^"]*)"/.exec(relation)?.[1]}` };
    },
  );
}

export function plain(text: string | undefined): string | undefined {
  return text
    ?.replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&amp;/g, "&");
}
