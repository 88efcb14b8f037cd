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
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { run, withEngine, type Work } from "../../../../src/hosts/terminal/file/command";
import { converted, HOSTS } from "../../../../src/hosts/terminal/file/convert";
import { recalculated } from "../../../../src/hosts/terminal/file/recalc";
import { shared } from "../../../../src/hosts/terminal/file/share";
import { BAD, GOOD } from "./bad-workbooks";
import { cellXml, partsOf, tiny } from "./tiny";

const SHARE: Work = { name: "share", does: "Shares.", inPlace: false, make: withEngine(shared) };
const RECALC: Work = { name: "recalc", does: "Recalculates.", inPlace: true, make: withEngine(recalculated) };
const choice = { option: "--for", words: HOSTS };
const CONVERT: Work = { name: "convert", does: "Converts.", inPlace: true, choice, make: converted };
const NOON = new Date(2026, 2, 1, 12, 0);
const ROOT = join(import.meta.dirname, "../../../..");

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

  it.each([
    [["--for", "sheets"], '--for wants online or excel, not "sheets"'],
    [["--for=sheets"], '--for wants online or excel, not "sheets"'],
    [["--for"], '--for wants online or excel, not ""'],
    [[], "--for wants online or excel, and was not given"],
  ])("that want a choice answer 2 to %j and say how", async (words, complaint) => {
    const seen = await command(CONVERT, "a.xlsx", "b.xlsx", ...words);
    expect(seen.code).toBe(2);
    expect(seen.err).toContain(complaint);
    expect(seen.err).toContain("Use: npm run --silent convert -- in.xlsx out.xlsx --for online|excel");
    expect((await command(SHARE, "a.xlsx", "b.xlsx", ...words)).err).not.toContain("--for wants");
  });

  it("that are given their choice do as it says, in place when asked", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    const formula = (name: string) => cellXml(partsOf(readFileSync(path(name)))["xl/worksheets/sheet1.xml"]!, "A1");
    expect(await command(CONVERT, from, path("out.xlsx"), "--for", "online")).toMatchObject({ code: 0, err: "" });
    expect(formula("out.xlsx")).toContain("<f>BOLE_BOARDFEET(1,12,2)</f>");
    expect(await command(CONVERT, path("out.xlsx"), path("out.xlsx"), "--for=excel")).toMatchObject({ code: 1 });
    expect(await command(CONVERT, path("out.xlsx"), path("out.xlsx"), "--for=excel", "--overwrite")).toMatchObject({
      code: 0,
    });
    expect(formula("out.xlsx")).toContain("<f>_xldudf_BOLE_BOARDFEET(1,12,2)</f>");
  });

  it("answer the same as programs of their own", async () => {
    const from = await put("in.xlsx", await tiny(GOOD));
    const start = (name: string, ...words: string[]) =>
      spawnSync(process.execPath, ["--import", "tsx", join(ROOT, `src/hosts/terminal/${name}.ts`), ...words], {
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
    const converted = start("convert", from, path("online.xlsx"), "--for", "online");
    expect([converted.status, converted.stderr]).toEqual([0, ""]);
    expect(converted.stdout).toMatch(/^Wrote [^\n]*: 1 call of BOLE functions [^\n]*\n$/);
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
