import { strToU8, zipSync } from "fflate";
import { tiny, tinyParts, zipped } from "./tiny";

const MEGABYTE = 1024 * 1024;

/** A workbook that can be worked on. */
export const GOOD = {
  sheets: { Logs: '<row r="1"><c r="A1"><f>_xldudf_BOLE_BOARDFEET(1,12,2)</f><v>0</v></c></row>' },
};

/** Cuts, damages and swaps by which a workbook becomes something else, and what is said about it. */
export const BAD: [string, () => Promise<Uint8Array | string> | Uint8Array | string, string][] = [
  ["an empty file", () => "", "it is empty"],
  ["a list under a workbook's name", () => "a,b\n1,2\n", "it is not an .xlsx workbook, whatever its name says"],
  ["an old workbook", () => ole(""), "it is a workbook of the old kind (.xls)"],
  ["a locked workbook", () => ole("EncryptedPackage"), "it is locked with a password"],
  ["half a workbook", async () => (await tiny(GOOD)).slice(0, 900), "it is damaged or cut short"],
  ["a zip of something else", () => zipped({ "a.txt": "a" }), "it is a zip, but not an .xlsx workbook"],
  ["a workbook without Bole", () => tiny({ sheets: { Logs: "" } }), "it holds no BOLE formula"],
  ["a flipped bit", flipped, "it is damaged"],
  [
    "a document type",
    () => withSheet((xml) => xml.replace("?>\n", '?>\n<!-- a --><!DOCTYPE x [<!ENTITY a "b">]>')),
    "declares a document type (DOCTYPE)",
  ],
  [
    "a document type in a part that is not read",
    () => zipped({ ...tinyParts(GOOD), "customXml/item1.xml": "<!DOCTYPE a><a/>" }),
    "declares a document type (DOCTYPE)",
  ],
  ["broken XML", () => withSheet((xml) => xml.replace("</row>", "")), "its XML is broken"],
  ["a sheet that ends in the middle", () => withSheet((xml) => xml.slice(0, -30)), "its XML is broken"],
  ["a bomb", () => bomb(600 * MEGABYTE), "the limit is 512 MB"],
  ["a small bomb", () => bomb(20 * MEGABYTE), "times its size"],
  ["a bomb that lies about its size", () => bomb(100), "it is damaged or cut short"],
  [
    "a part whose name leaves the file",
    () => zipped({ ...tinyParts(GOOD), "xl\\..\\..\\a.xml": "<a/>" }),
    "names that a workbook cannot have",
  ],
  ["a cell outside its row", () => withSheet((xml) => xml.replace('r="A1"', 'r="A2"')), "its row 1 holds a cell A2"],
  ["a row that is none", () => withSheet((xml) => xml.replace('row r="1"', 'row r="first"')), "it has a row first"],
  [
    "a formula that fills a whole sheet",
    () => withSheet((xml) => xml.replace("<f>", '<f t="array" ref="A1:XFD1048576">')),
    "more than is calculated here",
  ],
  ["a missing sheet", missingSheet, "its part xl/worksheets/sheet1.xml is missing"],
  ["a template", () => withTypes((xml) => xml.replace("sheet.main", "template.main")), "it is a template"],
  [
    "a binary workbook",
    () =>
      withTypes((xml) =>
        xml.replace(
          "openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
          "ms-excel.sheet.binary.macroEnabled.main",
        ),
      ),
    "it is a binary workbook (.xlsb)",
  ],
];

function ole(text: string): Uint8Array {
  const heading = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
  return Buffer.concat([Buffer.from(heading), Buffer.alloc(500), Buffer.from(text, "utf16le"), Buffer.alloc(500)]);
}

function withSheet(change: (xml: string) => string): Uint8Array {
  const parts = tinyParts(GOOD);
  return zipped({ ...parts, "xl/worksheets/sheet1.xml": change(parts["xl/worksheets/sheet1.xml"]!) });
}

function withTypes(change: (xml: string) => string): Uint8Array {
  const parts = tinyParts(GOOD);
  return zipped({ ...parts, "[Content_Types].xml": change(parts["[Content_Types].xml"]!) });
}

function missingSheet(): Uint8Array {
  const parts = Object.entries(tinyParts(GOOD)).filter(([name]) => name !== "xl/worksheets/sheet1.xml");
  return zipped(Object.fromEntries(parts));
}

/** A stored part with one bit turned, which only its checksum shows. */
function flipped(): Uint8Array {
  const parts = Object.entries(tinyParts(GOOD)).map(([name, text]) => [name, strToU8(text)] as const);
  const bytes = Buffer.from(zipSync(Object.fromEntries(parts), { level: 0 }));
  const at = bytes.indexOf("BOARDFEET(1,12,2)") + "BOARDFEET(1,12,".length;
  bytes[at] = "3".charCodeAt(0);
  return bytes;
}

/** A workbook with twenty megabytes of noughts, whose directory says that it unpacks to this many bytes. */
function bomb(said: number): Uint8Array {
  const parts = Object.entries(tinyParts(GOOD)).map(([name, text]) => [name, strToU8(text)] as const);
  const noughts = { "xl/media/noughts.bin": new Uint8Array(20 * MEGABYTE) };
  const bytes = Buffer.from(zipSync({ ...Object.fromEntries(parts), ...noughts }, { level: 1 }));
  const entry = bytes.lastIndexOf("xl/media/noughts.bin") - 46;
  bytes.writeUInt32LE(said, entry + 24);
  return bytes;
}
