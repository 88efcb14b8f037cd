import { beforeAll, describe, expect, it } from "vitest";
import { validateXML } from "xmllint-wasm";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { partsOf, plain, sheetPaths, writtenCells, type WrittenCell } from "./parts";

/** Functions that change by themselves would make Excel work the file out anew on opening. */
const VOLATILE = /\b(?:TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|CELL|INFO)\(/;

let parts: Map<string, string>;
let written: WrittenCell[];
let byPlace: Map<string, WrittenCell>;
beforeAll(async () => {
  parts = await partsOf();
  written = writtenCells(parts);
  byPlace = new Map(written.map((cell) => [`${cell.sheet}!${cell.address}`, cell]));
});

const cells = () => written;
const formulas = () => cells().flatMap(({ formula, ...cell }) => (formula === undefined ? [] : [{ ...cell, formula }]));
const tables = () => [...parts].filter(([path]) => path.startsWith("xl/tables/")).map(([, xml]) => xml);
const withoutText = (formula: string) => formula.replace(/"(?:[^"]|"")*"/g, '""');

describe("the file of the sample workbook", () => {
  it("is well-formed XML in every part", async () => {
    const anything = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema"><xs:element name="anything"/></xs:schema>`;
    const { errors } = await validateXML({
      xml: [...parts].map(([fileName, contents]) => ({ fileName: fileName.replace(/\W/g, "_"), contents })),
      schema: { fileName: "anything.xsd", contents: anything },
    });
    expect(errors.filter(({ rawMessage }) => / parser (?:error|warning) /.test(rawMessage))).toEqual([]);
    expect(errors.length, "the reader did look at every part").toBeGreaterThanOrEqual(parts.size);
  });

  it("has a part behind every relationship, and a content type for every part", () => {
    const types = parts.get("[Content_Types].xml")!;
    for (const [path, xml] of parts) {
      if (!path.endsWith(".rels")) {
        const known =
          types.includes(`PartName="/${path}"`) || new RegExp(`Extension="${path.split(".").at(-1)}"`).test(types);
        expect(known || path === "[Content_Types].xml", path).toBe(true);
        continue;
      }
      const folder = path.replace(/_rels\/[^/]*$/, "");
      for (const [, target = ""] of xml.matchAll(/Target="([^"]*)"/g)) {
        const file = target.startsWith("/") ? target.slice(1) : new URL(target, `file:///${folder}`).pathname.slice(1);
        expect(parts.has(file), `${path}: ${target}`).toBe(true);
      }
    }
  });

  it("stores our functions so that Excel finds the add-in again, and no other way", () => {
    const ours = formulas().filter(({ formula }) => /BOLE/i.test(withoutText(formula)));
    expect(ours.length).toBeGreaterThan(1200);
    const names = readCatalog().map(({ name }) => name);
    for (const { sheet, address, formula } of ours) {
      const found = [...withoutText(formula).matchAll(/([\w.]*)BOLE[._]?(\w+)/gi)];
      for (const [whole, before, name = ""] of found) {
        expect(before, `${sheet}!${address} ${whole}`).toBe("_xldudf_");
        expect(names, `${sheet}!${address}`).toContain(name);
      }
    }
  });

  it("gives newer functions of Excel their long names", () => {
    const bare = formulas().filter(({ formula }) =>
      /(?<![.\w])(?:XLOOKUP|MAXIFS|FILTER|SORT|LET|IFNA|TEXTJOIN)\(/.test(withoutText(formula)),
    );
    expect(bare).toEqual([]);
  });

  it("names every table with brackets, which the file wants even round nothing", () => {
    const names = tables().map((xml) => / displayName="([^"]*)"/.exec(xml)![1]!);
    const bare = new RegExp(`(?<![\\w.'!])(?:${names.join("|")})(?![\\w.\\['!])`);
    expect(formulas().filter(({ formula }) => bare.test(withoutText(formula).replace(/\[[^\]]*\]/g, "[]")))).toEqual(
      [],
    );
  });

  it("holds nothing that makes Excel work it all out anew on opening", () => {
    expect(formulas().filter(({ formula }) => VOLATILE.test(withoutText(formula)))).toEqual([]);
    expect(parts.get("xl/workbook.xml")).toContain('<calcPr calcId="191029"/>');
    expect(parts.has("xl/calcChain.xml")).toBe(false);
  });

  it("marks every formula that spills as a dynamic array, with its values in the cells it fills", () => {
    const spilled = cells().filter(({ inner }) => inner.includes('<f t="array"'));
    expect(spilled.length).toBeGreaterThan(25);
    expect(spilled.filter(({ attributes }) => !attributes.includes(' cm="1"'))).toEqual([]);
    expect(
      cells().filter(({ attributes, inner }) => attributes.includes("cm=") && !inner.includes('t="array"')),
    ).toEqual([]);
    for (const { sheet, address, inner } of spilled) {
      const [from, to] = /ref="([A-Z]+\d+):?([A-Z]+\d+)?"/.exec(inner)!.slice(1);
      expect(from, sheet).toBe(address);
      if (!to || to === from) continue;
      const last = cells().filter(
        (cell) => cell.sheet === sheet && within(cell.address, from!, to) && cell.value !== undefined,
      );
      expect(last.length, `${sheet}!${address}`).toBeGreaterThan(1);
    }
  });

  it("carries the part that dynamic arrays need", () => {
    expect(parts.get("xl/metadata.xml")).toMatch(/<metadataType name="XLDAPR".*fDynamic="1".*<cellMetadata count="1">/);
    expect(parts.get("[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
    expect(parts.get("xl/_rels/workbook.xml.rels")).toContain('Target="metadata.xml"');
  });

  it("keeps formulas that spill out of tables", () => {
    for (const { path, sheet } of sheetPaths(parts))
      for (const block of blocksOfTables(path)) {
        const inside = cells().filter((cell) => cell.sheet === sheet && within(cell.address, ...block));
        expect(inside.filter(({ inner }) => inner.includes('t="array"'))).toEqual([]);
      }
  });

  it("keeps our functions out of rules and validation, where they fail", () => {
    let found = 0;
    for (const { path } of sheetPaths(parts)) {
      const rules = parts.get(path)!.match(/<(conditionalFormatting|dataValidations)\b.*?<\/\1>/g) ?? [];
      expect(rules.join("")).not.toMatch(/BOLE/);
      found += rules.length;
    }
    expect(found).toBeGreaterThan(10);
  });

  it("names its sheets, tables and cells as Excel allows, each once", () => {
    const workbook = parts.get("xl/workbook.xml")!;
    const sheets = sheetPaths(parts).map(({ sheet }) => sheet);
    expect(sheets[0]).toBe("Start here");
    expect(sheets.filter((name) => name.length > 31 || /[[\]:*?/\\]/.test(name))).toEqual([]);
    const names = [...workbook.matchAll(/<definedName name="([^"]*)"/g)]
      .map(([, name = ""]) => name)
      .filter((name) => !name.startsWith("_xlnm"));
    const named = [...names, ...tables().map((xml) => / displayName="([^"]*)"/.exec(xml)![1]!)];
    expect(
      named.filter((name) => !/^[A-Za-z_][\w.]{0,254}$/.test(name) || /^[A-Z]{1,3}\d+$|^[RC]\d*$/i.test(name)),
    ).toEqual([]);
    expect(new Set(named.map((name) => name.toLowerCase())).size).toBe(named.length);
  });

  it("heads every table with its columns' own names, each once, and fills new rows with the formula of the rows above", () => {
    expect(tables().length).toBeGreaterThan(12);
    for (const { path, sheet } of sheetPaths(parts))
      for (const xml of tablesOn(path)) {
        const [from, to] = blockOf(xml);
        const columns = [...xml.matchAll(/<tableColumn [^>]*name="([^"]*)"[^>]*?(?:\/>|>(.*?)<\/tableColumn>)/g)];
        const headings = columns.map(([, name]) => plain(name)!);
        expect(new Set(headings.map((name) => name.toLowerCase())).size).toBe(headings.length);
        const rows = rowsBetween(from, to);
        columns.forEach(([, name, inner], i) => {
          const letter = String.fromCharCode(from.charCodeAt(0) + i);
          expect(shared(sheet, `${letter}${rows[0]}`)).toBe(plain(name));
          const filling = plain(/<calculatedColumnFormula>(.*)<\/calculatedColumnFormula>/.exec(inner ?? "")?.[1]);
          const below = rows.slice(1).map((row) => cellAt(sheet, `${letter}${row}`)?.formula);
          expect([...new Set(below)], `${sheet} ${name}`).toEqual([filling]);
        });
      }
  });

  it("formats thicknesses and lengths as text, so that 5/4 and 8-6 stay what was typed", () => {
    const styles = [
      ...parts
        .get("xl/styles.xml")!
        .match(/<cellXfs.*<\/cellXfs>/s)![0]
        .matchAll(/<xf numFmtId="(\d+)"/g),
    ];
    const isText = (sheet: string, address: string) =>
      styles[Number(/s="(\d+)"/.exec(cellAt(sheet, address)!.attributes)![1])]![1] === "49";
    const places: [string, string][] = [
      ["Log book", "I11"],
      ["Boards", "D11"],
      ["Boards", "F11"],
      ["Slabs", "D11"],
      ["Slabs", "H11"],
      ["Drying", "D12"],
      ["Prices", "B9"],
      ["Cut plan", "B8"],
    ];
    for (const [sheet, address] of places) expect(isText(sheet, address), `${sheet}!${address}`).toBe(true);
  });

  it("prints every sheet one page wide, with its headings on each page", () => {
    for (const { path, sheet } of sheetPaths(parts))
      expect(parts.get(path), sheet).toMatch(/<pageSetUpPr fitToPage="1"\/>.*<pageSetup [^>]*fitToWidth="1"/s);
    const repeated = parts.get("xl/workbook.xml")!.match(/_xlnm\.Print_Titles/g) ?? [];
    expect(repeated.length).toBeGreaterThan(8);
  });

  it("draws its charts from cells that hold the numbers and the names", () => {
    const charts = [...parts].filter(([path]) => path.startsWith("xl/charts/")).map(([, xml]) => xml);
    expect(charts).toHaveLength(5);
    const ranges = charts.flatMap((xml) => [
      ...xml.matchAll(/<c:f>'([^']*)'!\$([A-Z])\$(\d+):\$[A-Z]\$(\d+)<\/c:f>.*?<\/c:(?:num|str)Cache>/g),
    ]);
    expect(ranges.length).toBeGreaterThan(20);
    for (const [whole, sheet = "", column, first, last] of ranges) {
      const points = [...whole.matchAll(/<c:v>([^<]*)<\/c:v>/g)].map(([, value]) => plain(value));
      const rows = rowsBetween(`A${first}`, `A${last}`);
      expect(points).toEqual(rows.map((row) => shown(sheet, `${column}${row}`)));
    }
  });

  it("puts the charts of a sheet into one drawing, as Excel wants it", () => {
    for (const { path, sheet } of sheetPaths(parts))
      expect(parts.get(path)!.match(/<drawing /g)?.length ?? 0, sheet).toBeLessThanOrEqual(1);
    expect(parts.get("xl/drawings/drawing1.xml")!.match(/<c:chart /g)).toHaveLength(4);
  });

  it("says on the sheets where figures are typed whether the add-in answers", () => {
    const asks = formulas().filter(({ formula }) => formula.includes("_xldudf_BOLE_VERSION()"));
    expect(asks.find(({ sheet }) => sheet === "Start here")?.formula).toBe("_xldudf_BOLE_VERSION()");
    expect(asks.length).toBeGreaterThan(8);
    for (const { sheet, formula } of asks.slice(1).filter(({ sheet: name }) => name !== "Functions"))
      expect(formula, sheet).toMatch(/^IFERROR\(.*Bole is missing/);
  });
});

function cellAt(sheet: string, address: string): WrittenCell | undefined {
  return byPlace.get(`${sheet}!${address}`);
}

/** What a cell shows as it is in the file: a number, or text by whichever way it is kept. */
function shown(sheet: string, address: string): string | undefined {
  const cell = cellAt(sheet, address);
  return cell?.attributes.includes('t="s"') ? shared(sheet, address) : cell?.value;
}

/** The text of a cell that holds a shared string. */
function shared(sheet: string, address: string): string | undefined {
  const strings = [...parts.get("xl/sharedStrings.xml")!.matchAll(/<si><t[^>]*>([^<]*)<\/t><\/si>/g)];
  return plain(strings[Number(cellAt(sheet, address)?.value)]?.[1]);
}

function tablesOn(sheetPath: string): string[] {
  const relations = parts.get(sheetPath.replace("worksheets/", "worksheets/_rels/") + ".rels") ?? "";
  return [...relations.matchAll(/Target="\.\.\/(tables\/[^"]*)"/g)].map(([, target]) => parts.get(`xl/${target}`)!);
}

function blocksOfTables(sheetPath: string): [string, string][] {
  return tablesOn(sheetPath).map(blockOf);
}

function blockOf(tableXml: string): [string, string] {
  return / ref="([A-Z]+\d+):([A-Z]+\d+)"/.exec(tableXml)!.slice(1) as [string, string];
}

function rowsBetween(from: string, to: string): number[] {
  const [first, last] = [from, to].map((address) => Number(address.replace(/\D/g, ""))) as [number, number];
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

function within(address: string, from: string, to: string): boolean {
  const place = (text: string) => [text.replace(/\d/g, "").padStart(3), Number(text.replace(/\D/g, ""))] as const;
  const [[column, row], [left, top], [right, bottom]] = [place(address), place(from), place(to)];
  return column >= left && column <= right && row >= top && row <= bottom;
}
