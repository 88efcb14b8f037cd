import { spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { manifestFor } from "../../../../manifest/manifest";
import { installScripts } from "../../../../src/hosts/excel/install/scripts";
import { filesUnder } from "../build";

const ADDRESS = "https://yard.example/bole";
const ID = "5cb9fbf8-d2c5-4966-be39-1a0149a38569";
const scripts = installScripts(ADDRESS);

const folder = mkdtempSync(join(tmpdir(), "bole install-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe.each(Object.entries(scripts))("%s", (_, script) => {
  it("knows its address and the add-in's number, and has no mark left to fill", () => {
    expect(script).toContain(`'${ADDRESS}'`);
    expect(script).toContain(`'${ID}'`);
    expect(script).not.toMatch(/\{\{\w*\}\}/);
  });
  it("is plain ASCII, which every shell reads alike", () => expect(script).toMatch(/^[\x09\x0a\x0d\x20-\x7e]*$/));
});

/* Unix has the shell of a Mac; what Excel does with the file no machine here can tell. */
describe.skipIf(process.platform === "win32")("the script for a Mac, in a home of its own", () => {
  const home = join(folder, "Ann Mill");
  const excel = join(home, "Library/Containers/com.microsoft.Excel");
  const place = join(excel, "Data/Documents/wef", `${ID}.manifest.xml`);
  const script = join(folder, "install-mac.sh");
  const tools = join(folder, "tools");

  /** Runs the script with a `curl` that answers what stands in a file here, or fails as when there is no network. */
  function run(words: string[], answer?: string) {
    mkdirSync(tools, { recursive: true });
    const served = join(folder, "served");
    rmSync(served, { force: true });
    if (answer !== undefined) writeFileSync(served, answer);
    writeFileSync(
      join(tools, "curl"),
      `#!/bin/sh\nwhile [ "$1" != --output ]; do shift; done\n[ "$3" = "${ADDRESS}/manifest.xml" ] || exit 3\ncat "${served}" > "$2"\n`,
    );
    chmodSync(join(tools, "curl"), 0o755);
    writeFileSync(script, scripts["install-mac.sh"]!);
    const done = spawnSync("sh", [script, ...words], {
      env: { HOME: home, PATH: `${tools}:${process.env.PATH}` },
      encoding: "utf8",
    });
    return { code: done.status, said: done.stdout, complaint: done.stderr };
  }
  const manifest = manifestFor(ADDRESS, "1.0.0");
  const files = () => (existsSync(home) ? filesUnder(home) : []);

  beforeEach(() => {
    rmSync(home, { recursive: true, force: true });
    mkdirSync(excel, { recursive: true });
  });

  it("puts the manifest where Excel looks for it, twice without harm, and nothing else", () => {
    expect(run([], manifest)).toEqual({
      code: 0,
      said: `Wrote ${place}\nQuit Excel and start it again; then Home, Add-ins, Bole.\n`,
      complaint: "",
    });
    expect(run([], manifest).code).toBe(0);
    expect(files()).toEqual([place]);
    expect(readFileSync(place, "utf8")).toBe(manifest);
  });

  it("takes it out again, twice without harm, and leaves what others put there", () => {
    run([], manifest);
    const other = join(excel, "Data/Documents/wef/other.xml");
    writeFileSync(other, "<OfficeApp/>");
    expect(run(["--undo"]).said).toBe(`Removed ${place}\nBole is gone from the next start of Excel on.\n`);
    expect(run(["--undo"])).toMatchObject({ code: 0, said: expect.stringContaining(`There is no ${place}`) });
    expect(files()).toEqual([other]);
  });

  it.each([
    ["there is no network", undefined, /cannot be had. Nothing was changed/],
    ["the host answers something else", "<html>Not found</html>", /is not Bole's manifest. Nothing was changed/],
    ["the manifest is another add-in's", manifest.replaceAll(ID, "0".repeat(36)), /is not Bole's manifest/],
  ])("changes nothing when %s, and keeps what worked", (_, answer, complaint) => {
    const refused = run([], answer);
    expect(refused.code).toBe(1);
    expect(refused.complaint).toMatch(complaint);
    expect(files()).toEqual([]);
    run([], manifest);
    run([], answer);
    expect(files()).toEqual([place]);
    expect(readFileSync(place, "utf8")).toBe(manifest);
  });

  it("says that Excel has to be started once, and how it is used", () => {
    rmSync(home, { recursive: true });
    expect(run([], manifest)).toMatchObject({ code: 1, complaint: expect.stringContaining("Start it once") });
    expect(readdirSync(folder)).not.toContain("Ann Mill");
    expect(run(["--remove"], manifest)).toMatchObject({ code: 2, complaint: "Use: sh install-mac.sh [--undo]\n" });
  });
});

/* There is no PowerShell here: its text is read for what it may touch. */
describe("the script for Windows", () => {
  const script = scripts["install-windows.ps1"]!;
  const lines = script.split("\r\n").filter((line) => !line.startsWith("#"));

  it("closes every bracket and quote in its line or block", () => {
    for (const [open, close] of ["{}", "()", "[]"].map((pair) => [...pair]))
      expect(script.split(open!).length, `${open}${close}`).toBe(script.split(close!).length);
    const code = lines.map((line) => line.replace(/\s#.*$/, "").replace(/"[^"]*"/g, ""));
    for (const line of code) expect(line.split("'").length % 2, line).toBe(1);
  });

  it("changes one value of the user's own registry and one folder of his own, each named once", () => {
    expect(script).toContain(String.raw`$Key = 'HKCU:\SOFTWARE\Microsoft\Office\16.0\Wef\Developer'`);
    expect(script).toContain("$Folder = Join-Path $env:LOCALAPPDATA 'Bole'");
    expect(script).not.toMatch(/HKLM|ProgramFiles|-Recurse|Invoke-Expression|Set-ExecutionPolicy|RunAs/);
    const changing = lines.filter((line) =>
      /\b(?:New|Remove|Set|Move|Copy|Out)-(?:Item|ItemProperty|File|Content)\b/.test(line),
    );
    for (const line of changing) expect(line).toMatch(/\$(?:Folder|Manifest|Part|Key)\b/);
  });

  it("never makes the key anew where it is, which would take other add-ins out", () => {
    expect(lines.filter((line) => /New-Item .*\$Key/.test(line))).toEqual([
      "  if (-not (Test-Path -LiteralPath $Key)) { New-Item -Path $Key -Force | Out-Null }",
    ]);
  });
});
