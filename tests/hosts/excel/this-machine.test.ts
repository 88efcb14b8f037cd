import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { placingOn, take } from "../../../src/hosts/excel/this-machine";

const folder = mkdtempSync(join(tmpdir(), "bole-machine-"));
afterAll(() => rmSync(folder, { recursive: true }));

const ID = "5cb9fbf8-d2c5-4966-be39-1a0149a38569";

describe("the Excel of this machine", () => {
  it("on Windows learns of the add-in by one value of the registry, and forgets only that", () => {
    const manifest = String.raw`C:\Users\Ann Mill\bole\dist\manifest.xml`;
    const placing = placingOn({ platform: "win32", home: "", has: () => true }, { id: ID, manifest });
    const key = String.raw`HKCU\SOFTWARE\Microsoft\Office\16.0\Wef\Developer`;
    expect(placing.missing).toBeUndefined();
    expect(placing.putIn[0]).toEqual({
      does: "run",
      program: "reg",
      words: ["add", key, "/v", ID, "/t", "REG_SZ", "/d", manifest, "/f"],
    });
    expect(placing.takeOut).toEqual([{ does: "run", program: "reg", words: ["delete", key, "/v", ID, "/f"] }]);
  });

  it("on a Mac learns of it by a file in Excel's own folder, twice without harm, and forgets it again", () => {
    const manifest = join(folder, "manifest.xml");
    writeFileSync(manifest, "<OfficeApp/>");
    const excel = join(folder, "Library/Containers/com.microsoft.Excel");
    const machine = { platform: "darwin" as const, home: folder, has: existsSync };
    expect(placingOn(machine, { id: ID, manifest }).missing).toContain("Start it once");
    mkdirSync(excel, { recursive: true });
    const { missing, putIn, takeOut } = placingOn(machine, { id: ID, manifest });
    expect(missing).toBeUndefined();
    const said: string[] = [];
    const say = (line: string) => void said.push(line);
    const copying = putIn.filter(({ does }) => does === "copy");
    take(copying, say);
    take(copying, say);
    const wef = join(excel, "Data/Documents/wef");
    expect(readdirSync(wef)).toEqual([`${ID}.manifest.xml`]);
    expect(readFileSync(join(wef, `${ID}.manifest.xml`), "utf8")).toBe("<OfficeApp/>");
    take(takeOut, say);
    take(takeOut, say);
    expect(readdirSync(wef)).toEqual([]);
    expect(said.map((line) => line.split(" ")[0])).toEqual(["Wrote", "Wrote", "Removed", "There"]);
  });

  it("is none elsewhere, and that is said", () => {
    const placing = placingOn({ platform: "linux", home: "", has: () => true }, { id: ID, manifest: "" });
    expect(placing.missing).toContain("Windows and macOS only");
  });

  it.each(["README.md", "src/hosts/excel/help.html", "manifest/manifest.xml"])(
    "knows it by one id, in %s too",
    (file) => {
      expect(readFileSync(join(import.meta.dirname, "../../..", file), "utf8")).toContain(ID);
    },
  );
});
