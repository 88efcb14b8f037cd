import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../src/engine/engine";
import { recalculated } from "../../src/hosts/terminal/file/recalc";
import { shared } from "../../src/hosts/terminal/file/share";
import { encoded } from "../../src/xlsx/encoding";
import { openPackage } from "../../src/xlsx/package";
import { declaresDocumentType, tags } from "../../src/xlsx/xml";
import { tinyParts, zippedBytes } from "../hosts/terminal/file/tiny";

const AT = new Date("2026-03-01T12:00:00Z");
const SHEET = "xl/worksheets/sheet1.xml";
const MAIN_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
const CELL = `<row r="1"><c r="A1"><f>_xldudf_BOLE_BOARDFEET(1,12,2)</f><v>0</v></c></row>`;
const healthy = tinyParts({ sheets: { Logs: CELL } });
const latin = (parts: Record<string, string>) =>
  Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, new TextEncoder().encode(text)]));

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

const named = (name: string) => latin(tinyParts({ sheets: { [name]: CELL } }));
const utf16 = (text: string) => encoded(`\uFEFF${text.replace("UTF-8", "UTF-16")}`, "utf-16le");

describe("healthy workbooks with other writers' habits", () => {
  it.each<[string, Record<string, Uint8Array>]>([
    [
      "a content type that is said of the ending alone",
      latin({
        ...healthy,
        "[Content_Types].xml": healthy["[Content_Types].xml"]!.replace("application/xml", MAIN_TYPE).replace(
          /<Override PartName="\/xl\/workbook.xml"[^>]*>/,
          "",
        ),
      }),
    ],
    ["a part in UTF-16 that nobody needs to read", { ...latin(healthy), "customXml/item1.xml": utf16("<a>ä</a>") }],
    ["every part in UTF-16", Object.fromEntries(Object.entries(healthy).map(([name, text]) => [name, utf16(text)]))],
    [
      "a comment before the root",
      latin({ ...healthy, [SHEET]: healthy[SHEET]!.replace("<worksheet", "<!-- written by hand --><worksheet") }),
    ],
    [
      "backslashes in the names of its parts",
      latin(Object.fromEntries(Object.entries(healthy).map(([name, text]) => [name.replaceAll("/", "\\"), text]))),
    ],
    ["a part without anything in it", { ...latin(healthy), "docProps/thumbnail.bin": new Uint8Array() }],
    ["a sheet called History", named("History")],
    ["a sheet whose name Excel would not take", named("a:b/c[1]")],
  ])("%s", async (_, parts) => {
    const bytes = zippedBytes(parts);
    const made = openPackage((await recalculated(bytes, engine, AT)).bytes, AT);
    expect(made.text(SHEET)).toContain("<v>2</v>");
    const copy = openPackage((await shared(bytes, engine, AT)).bytes, AT);
    expect(copy.text(SHEET)).toMatch(/<c r="A1"><v>2<\/v><\/c>/);
  });

  it("a workbook in UTF-16 stays in UTF-16", async () => {
    const parts = Object.fromEntries(Object.entries(healthy).map(([name, text]) => [name, utf16(text)]));
    const made = openPackage((await recalculated(zippedBytes(parts), engine, AT)).bytes, AT);
    expect([...made.content(SHEET).subarray(0, 4)]).toEqual([0xff, 0xfe, 0x3c, 0]);
  });
});

describe("a workbook that counts its days from 1904", () => {
  const since1904 = (formula: string, value: number) =>
    zippedBytes(
      latin(
        tinyParts({
          sheets: { Logs: `<row r="1"><c r="A1"><v>44620</v></c><c r="B1"><f>${formula}</f><v>${value}</v></c></row>` },
          workbook: `<workbookPr date1904="1"/>`,
        }),
      ),
    );

  it("is calculated with its own days: the first of March 2026 is 44,620 there", async () => {
    const { bytes } = await recalculated(since1904("_xldudf_BOLE_LINEAMOUNT(TODAY()-A1+3,1)", 0), engine, AT);
    expect(openPackage(bytes, AT).text(SHEET)).toContain("<v>3</v>");
  });

  it("keeps the file's value where a formula reads the calendar, and says so", async () => {
    const { bytes, summary } = await recalculated(since1904("_xldudf_BOLE_LINEAMOUNT(YEAR(A1),1)", 2026), engine, AT);
    expect(openPackage(bytes, AT).text(SHEET)).toContain("<v>2026</v>");
    expect(summary).toContain("counts from 1904");
  });
});

describe("reading XML that is made to hurt", () => {
  /** What a text of so many pieces costs, in pieces looked at: the reader's steps must grow as the text does. */
  it.each([
    ["instructions before the root", "<?a?>"],
    ["comments before the root", "<!--a-->"],
  ])("%s", (_, piece) => {
    expect(declaresDocumentType(`${piece.repeat(100_000)}<a/>`)).toBe(false);
    expect(declaresDocumentType(`${piece.repeat(100_000)}<!DOCTYPE a>`)).toBe(true);
    expect(declaresDocumentType(piece.repeat(100_000))).toBe(false);
  });

  it.each([
    ["comments that never end", "<!--"],
    ["tags that never end", "<a "],
    ["quotes that never end", `<a b="`],
    ["CDATA that never ends", "<![CDATA["],
  ])("%s are broken XML, said at once", (_, piece) => {
    expect(() => [...tags(piece.repeat(250_000))]).toThrow("its XML is broken");
  });
});
