import { strToU8, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../src/engine/engine";
import { Refused } from "../../src/xlsx/refused";
import { tinyParts } from "../hosts/terminal/file/tiny";

const SHEET = "xl/worksheets/sheet1.xml";
const WORKBOOK = "xl/workbook.xml";
const MEGABYTE = 1024 * 1024;

let engine: Engine;
beforeAll(async () => void (engine = await startEngine()));
afterAll(() => engine.stop());

const SOUND = tinyParts({
  sheets: { S: `<row r="1"><c r="A1"><v>1</v></c></row><row r="2"><c r="A2"><f>A1+1</f><v>0</v></c></row>` },
});

/** A small sound workbook (A2 is A1 + 1) with a part of it changed. */
async function workbook(part: string, change: (xml: string) => string): Promise<Uint8Array> {
  const parts = { ...SOUND, [part]: change(SOUND[part] ?? "") };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}

const afterCells = (xml: string) => (sheet: string) => sheet.replace("</sheetData>", `</sheetData>${xml}`);

/** The number at a place behind each heading of a zip's directory entry, set to another. */
function lyingAboutSizes(zip: Uint8Array, size: number): Uint8Array {
  const lying = zip.slice();
  const view = new DataView(lying.buffer);
  for (let at = 0; at + 46 < lying.length; at++)
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, size, true);
  return lying;
}

/** A part more than the zip's end counts, for a reader that looks further than that. */
async function hiding(part: string, content: string): Promise<Uint8Array> {
  const zip = (await workbook(part, () => content)).slice();
  const view = new DataView(zip.buffer);
  const end = zip.length - 22;
  expect(view.getUint32(end, true)).toBe(0x06054b50);
  for (const count of [end + 8, end + 10]) view.setUint16(count, view.getUint16(count, true) - 1, true);
  return zip;
}

/** A part whose entry in the zip's directory has another name behind the first, as old programs spelt letters. */
async function renaming(part: string, content: string, to: string): Promise<Uint8Array> {
  const zip = Buffer.from(await workbook(part, () => content));
  const heading = zip.lastIndexOf(part) - 46;
  const behindName = heading + 46 + part.length;
  const name = Buffer.alloc(9 + to.length);
  name.writeUInt16LE(0x7075, 0);
  name.writeUInt16LE(5 + to.length, 2);
  name.writeUInt8(1, 4);
  name.writeUInt32LE(crcOf(part), 5);
  name.write(to, 9);
  const renamed = Buffer.concat([zip.subarray(0, behindName), name, zip.subarray(behindName)]);
  renamed.writeUInt16LE(name.length, heading + 30);
  const length = renamed.length - 22 + 12;
  renamed.writeUInt32LE(renamed.readUInt32LE(length) + name.length, length);
  return renamed;
}

function crcOf(text: string): number {
  let sum = ~0;
  for (const byte of Buffer.from(text)) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return ~sum >>> 0;
}

describe("a file that is made to do harm is refused by the try-out sheet before it can", () => {
  it.each<[string, () => Promise<Uint8Array>, RegExp]>([
    [
      "a zip bomb",
      () => workbook("xl/media/big.bin", () => "\0".repeat(64 * MEGABYTE)),
      /unpack to \d+ times its size/,
    ],
    [
      "a zip bomb among the cells",
      () => workbook(SHEET, (xml) => xml + " ".repeat(64 * MEGABYTE)),
      /unpack to \d+ times/,
    ],
    [
      "a zip that says it is smaller than it is",
      async () => lyingAboutSizes(await workbook(SHEET, (xml) => xml), 10),
      /damaged or cut short/,
    ],
    [
      "a zip that says it is larger than any disk",
      async () => lyingAboutSizes(await workbook(SHEET, (xml) => xml), 0xf0000000),
      /would unpack to \d+ MB; the limit is 512 MB/,
    ],
    [
      "a zip bomb hidden behind the end of the directory",
      () => hiding("xl/media/zz.bin", "\0".repeat(64 * MEGABYTE)),
      /damaged or cut short/,
    ],
    [
      "a part with a second name, under which it would be read",
      () => renaming("xl/a.bin", "<!DOCTYPE a><a/>", "xl/worksheets/sheet9.xml"),
      /names that a workbook cannot have/,
    ],
    [
      "entities that would grow to billions of letters",
      () =>
        workbook(SHEET, (xml) =>
          xml.replace(
            /^(<\?xml[^>]*\?>)?/,
            '<!DOCTYPE s [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;">]>',
          ),
        ),
      /declares a document type \(DOCTYPE\)/,
    ],
    [
      "billions of merged cells",
      () => workbook(SHEET, afterCells('<mergeCells><mergeCell ref="A3:XFD1048576"/></mergeCells>')),
      /merges \d+ cells/,
    ],
    [
      "a row that no sheet has",
      () => workbook(SHEET, (xml) => xml.replace("</sheetData>", '<row r="2000000000"/></sheetData>')),
      /has a row 2000000000/,
    ],
    [
      "a column that no sheet has",
      () =>
        workbook(SHEET, (xml) =>
          xml.replace("<sheetData>", '<cols><col min="1" max="2000000000" width="9"/></cols><sheetData>'),
        ),
      /names column 2000000000/,
    ],
    [
      "a name that leads out of the folder",
      () => workbook("../../evil.xml", () => "<a/>"),
      /names that a workbook cannot have/,
    ],
    ["no workbook at all", async () => new TextEncoder().encode("<html>"), /not an \.xlsx workbook/],
    ["nothing", async () => new Uint8Array(), /is empty/],
  ])("%s", async (_, file, reason) => {
    const refusal = await engine.open(await file()).then(
      () => undefined,
      (fault: unknown) => fault,
    );
    expect(refusal).toBeInstanceOf(Refused);
    expect((refusal as Refused).message).toMatch(reason);
  });
});

describe("what a person may well have in a workbook is read", () => {
  it.each<[string, () => Promise<Uint8Array>]>([
    [
      "a name for a whole sheet",
      () =>
        workbook(WORKBOOK, (xml) =>
          xml.replace(
            "</sheets>",
            '</sheets><definedNames><definedName name="All">S!$A$1:$XFD$1048576</definedName></definedNames>',
          ),
        ),
    ],
    [
      "a rule of input for a whole sheet",
      () =>
        workbook(
          SHEET,
          afterCells(
            '<dataValidations count="1"><dataValidation type="whole" sqref="A1:XFD1048576"><formula1>1</formula1></dataValidation></dataValidations>',
          ),
        ),
    ],
    [
      "a heading merged over a row",
      () => workbook(SHEET, afterCells('<mergeCells><mergeCell ref="A3:Z3"/></mergeCells>')),
    ],
    [
      "widths set for every column",
      () =>
        workbook(SHEET, (xml) =>
          xml.replace("<sheetData>", '<cols><col min="1" max="16384" width="9"/></cols><sheetData>'),
        ),
    ],
  ])("%s", async (_, file) => {
    expect((await engine.open(await file())).value("S", "A2")).toBe(2);
  });
});
