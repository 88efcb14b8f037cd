import { spawnSync } from "node:child_process";
import {
  chmodSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
  mkdirSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import JSZip from "jszip";
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { run, type Work } from "../../../../src/hosts/tryout/file/command";
import { recalculated } from "../../../../src/hosts/tryout/file/recalc";
import { shared } from "../../../../src/hosts/tryout/file/share";
import { cellXml, partsOf, tiny, tinyParts, zipped } from "./tiny";

const SHARE: Work = { name: "share", does: "Shares.", inPlace: false, make: shared };
const RECALC: Work = { name: "recalc", does: "Recalculates.", inPlace: true, make: recalculated };
const NOON = new Date(2026, 2, 1, 12, 0);
const MEGABYTE = 1024 * 1024;
const ROOT = join(import.meta.dirname, "../../../..");
const GOOD = { sheets: { Logs: '<row r="1"><c r="A1"><f>_xldudf_BOLE_BOARDFEET(1,12,2)</f><v>0</v></c></row>' } };

let folder: string;
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), "bole-"))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeEach(() => {
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true, force: true });
});

const path = (name: string) => join(folder, name);

/** Runs a command in the folder and answers what a person at the terminal sees. */
async function command(work: Work, ...words: string[]) {
  const [said, complained] = [vi.spyOn(console, "log"), vi.spyOn(console, "error")];
  said.mockImplementation(() => undefined);
  complained.mockImplementation(() => undefined);
  const code = await run(work, words, NOON);
  const seen = { code, out: said.mock.calls.flat().join("\n"), err: complained.mock.calls.flat().join("\n") };
  said.mockRestore();
  complained.mockRestore();
  return seen;
}

async function put(name: string, content: Uint8Array | string): Promise<string> {
  writeFileSync(path(name), content);
  return path(name);
}

describe("the commands", () => {
  it("answer 0, write the copy and leave nothing else behind", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    const before = readFileSync(from);
    const seen = await command(RECALC, from, path("out.xlsx"));
    expect(seen).toMatchObject({ code: 0, err: "" });
    expect(seen.out).toMatch(/^Wrote .*out\.xlsx: 1 BOLE formula .*\.$/);
    expect(cellXml((await partsOf(readFileSync(path("out.xlsx"))))["xl/worksheets/sheet1.xml"]!, "A1")).toContain(
      "<v>2</v>",
    );
    expect(readFileSync(from).equals(before)).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
  });

  it("take the clock's hour, or the day that they are told", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    expect((await command(SHARE, from, path("a.xlsx"))).out).toContain("taken 2026-03-01, 12:00,");
    expect((await command(SHARE, from, path("b.xlsx"), "--date", "2026-02-28")).out).toContain("taken 2026-02-28,");
    expect((await command(SHARE, from, path("c.xlsx"), "--date=2026-02-28")).out).toContain("taken 2026-02-28,");
    expect(readFileSync(path("b.xlsx")).equals(readFileSync(path("c.xlsx")))).toBe(true);
  });

  it.each([
    [[], "Wanted two paths, got 0"],
    [["a.xlsx"], "Wanted two paths, got 1"],
    [["a.xlsx", "b.xlsx", "c.xlsx"], "Wanted two paths, got 3"],
    [["a.xlsx", "b.xlsx", "--force"], "There is no option --force"],
    [["a.xlsx", "b.xlsx", "--date", "2026-02-30"], '--date wants a day such as 2026-03-01, not "2026-02-30"'],
    [["a.xlsx", "b.xlsx", "--date"], '--date wants a day such as 2026-03-01, not ""'],
  ])("used wrongly %j answer 2 and say how", async (words, complaint) => {
    const seen = await command(SHARE, ...words);
    expect(seen.code).toBe(2);
    expect(seen.err).toContain(complaint);
    expect(seen.err).toContain("Use: npm run --silent share -- in.xlsx out.xlsx");
  });

  it("answer the same as programs of their own", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    const start = (name: string, ...words: string[]) =>
      spawnSync(process.execPath, ["--import", "tsx", join(ROOT, `src/hosts/tryout/${name}.ts`), ...words], {
        cwd: ROOT,
        encoding: "utf8",
      });
    const shared = start("share", from, path("out.xlsx"));
    expect([shared.status, shared.stderr]).toEqual([0, ""]);
    expect(shared.stdout).toMatch(/^Wrote [^\n]*\n$/);
    const again = start("recalc", from, path("out.xlsx"));
    expect([again.status, again.stdout]).toEqual([1, ""]);
    expect(again.stderr).toMatch(/^[^\n]*out\.xlsx is there already[^\n]*\n$/);
    expect(start("recalc").status).toBe(2);
  });
});

describe("paths", () => {
  it("count from the folder in which the person stands, wherever npm starts the command", async () => {
    await put("in.xlsx", await tiny(GOOD));
    vi.stubEnv("INIT_CWD", folder);
    expect(await command(RECALC, "in.xlsx", "out.xlsx")).toMatchObject({ code: 0 });
    vi.unstubAllEnvs();
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
  });
});

describe("what is there is not written over", () => {
  it("unless --overwrite is given", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    await put("out.xlsx", "mine");
    expect(await command(RECALC, from, path("out.xlsx"))).toMatchObject({ code: 1, out: "" });
    expect(readFileSync(path("out.xlsx"), "utf8")).toBe("mine");
    expect(await command(RECALC, from, path("out.xlsx"), "--overwrite")).toMatchObject({ code: 0 });
    expect(readFileSync(path("out.xlsx"), "latin1").startsWith("PK")).toBe(true);
  });

  it("the workbook itself is recalculated in place only when asked, and never replaced by its copy", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    symlinkSync(from, path("link.xlsx"));
    const before = readFileSync(from);
    expect((await command(RECALC, from, from)).code).toBe(1);
    for (const to of [from, path("link.xlsx")]) {
      const seen = await command(SHARE, from, to, "--overwrite");
      expect(seen).toMatchObject({ code: 1, err: expect.stringContaining("its formulas would be lost") as string });
    }
    expect(readFileSync(from).equals(before)).toBe(true);
    expect((await command(RECALC, from, from, "--overwrite")).code).toBe(0);
    expect(readFileSync(from).equals(before)).toBe(false);
  });
});

/** Cuts, damages and swaps by which a workbook becomes something else, and what is said about it. */
const BAD: [string, () => Promise<Uint8Array | string> | Uint8Array | string, string][] = [
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
    () => zipped({ ...tinyParts(GOOD), "xl\\a.xml": "<a/>" }),
    "names that a workbook cannot have",
  ],
  [
    "days counted from 1904",
    () => tiny({ ...GOOD, workbook: '<workbookPr date1904="1"/>' }),
    "counts its days from 1904",
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

describe("what is no workbook to work on", () => {
  it.each(BAD)("%s is refused in one line, and nothing is written", async (_, make, complaint) => {
    const from = await put("in.xlsx", await make());
    const before = readFileSync(from);
    for (const work of [SHARE, RECALC]) {
      const seen = await command(work, from, path("out.xlsx"));
      expect(seen).toMatchObject({ code: 1, out: "" });
      expect(seen.err).toContain(complaint);
      expect(seen.err).not.toMatch(/\n|fault in Bole/);
    }
    expect(readdirSync(folder)).toEqual(["in.xlsx"]);
    expect(readFileSync(from).equals(before)).toBe(true);
  });

  it("a missing file, a folder, a folder that is not there, an ending that lies", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    const macros = await put("in.xlsm", await tiny({ ...GOOD, macros: true }));
    const complaint = async (...words: string[]) => (await command(SHARE, ...words)).err;
    expect(await complaint(path("no.xlsx"), path("out.xlsx"))).toContain("there is no such file");
    expect(await complaint(folder, path("out.xlsx"))).toContain("it is a folder");
    expect(await complaint(from, join(folder, "no", "out.xlsx"))).toMatch(/the folder of .* is not there/);
    expect(await complaint(from, folder)).toContain("is a folder");
    expect(await complaint(from, path("out.csv"))).toContain("ends in .xlsx");
    expect(await complaint(macros, path("out.xlsx"))).toContain("ends in .xlsm");
    expect(await complaint(macros, path("out.xlsm"))).toBe("");
  });

  it("a folder that may not be written to", async () => {
    // An administrator may write into every folder but those that the system itself makes up.
    const from = await put("in.xlsx", await tiny(GOOD));
    mkdirSync(path("closed"));
    chmodSync(path("closed"), 0o500);
    const administrator = process.getuid?.() === 0;
    const to = administrator ? "/proc/out.xlsx" : join(path("closed"), "out.xlsx");
    expect((await command(SHARE, from, to)).err).toMatch(/cannot be written \(E\w+\)/);
    expect(readdirSync(path("closed"))).toEqual([]);
  });
});

function ole(text: string): Uint8Array {
  const heading = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
  return Buffer.concat([Buffer.from(heading), Buffer.alloc(500), Buffer.from(text, "utf16le"), Buffer.alloc(500)]);
}

function withSheet(change: (xml: string) => string): Promise<Uint8Array> {
  const parts = tinyParts(GOOD);
  return zipped({ ...parts, "xl/worksheets/sheet1.xml": change(parts["xl/worksheets/sheet1.xml"]!) });
}

function withTypes(change: (xml: string) => string): Promise<Uint8Array> {
  const parts = tinyParts(GOOD);
  return zipped({ ...parts, "[Content_Types].xml": change(parts["[Content_Types].xml"]!) });
}

function missingSheet(): Promise<Uint8Array> {
  const parts = Object.entries(tinyParts(GOOD)).filter(([name]) => name !== "xl/worksheets/sheet1.xml");
  return zipped(Object.fromEntries(parts));
}

/** A stored part with one bit turned, which only its checksum shows. */
async function flipped(): Promise<Uint8Array> {
  const zip = new JSZip();
  for (const [name, text] of Object.entries(tinyParts(GOOD))) zip.file(name, text);
  const bytes = Buffer.from(await zip.generateAsync({ type: "uint8array", compression: "STORE" }));
  const at = bytes.indexOf("BOARDFEET(1,12,2)") + "BOARDFEET(1,12,".length;
  bytes[at] = "3".charCodeAt(0);
  return bytes;
}

/** A workbook with twenty megabytes of noughts, whose directory says that it unpacks to this many bytes. */
async function bomb(said: number): Promise<Uint8Array> {
  const zip = new JSZip();
  for (const [name, text] of Object.entries(tinyParts(GOOD))) zip.file(name, text);
  zip.file("xl/media/noughts.bin", new Uint8Array(20 * MEGABYTE));
  const bytes = Buffer.from(await zip.generateAsync({ type: "uint8array", compression: "DEFLATE" }));
  const entry = bytes.lastIndexOf("xl/media/noughts.bin") - 46;
  bytes.writeUInt32LE(said, entry + 24);
  return bytes;
}
