import { spawnSync } from "node:child_process";
import {
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { mustBeFree, read, write } from "../../../../src/hosts/terminal/file/on-disk";

let folder: string;
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), "bole-"))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeEach(() => {
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { force: true });
});

const path = (name: string) => join(folder, name);
const NEW = new TextEncoder().encode("new");

describe("a workbook on the disk", () => {
  it("keeps who may read and write it when it is replaced", () => {
    writeFileSync(path("a.xlsx"), "old", { mode: 0o640 });
    write(path("a.xlsx"), NEW, true);
    expect([readFileSync(path("a.xlsx"), "utf8"), statSync(path("a.xlsx")).mode & 0o777]).toEqual(["new", 0o640]);
  });

  it("is replaced where a link leads, and the link stays", () => {
    writeFileSync(path("a.xlsx"), "old");
    symlinkSync(path("a.xlsx"), path("link.xlsx"));
    write(path("link.xlsx"), NEW, true);
    expect([readFileSync(path("a.xlsx"), "utf8"), lstatSync(path("link.xlsx")).isSymbolicLink()]).toEqual([
      "new",
      true,
    ]);
  });

  it("is written where a killed run left a part, which is cleared; that of a run that still works is not", () => {
    const ended = spawnSync(process.execPath, ["-e", ""]).pid;
    writeFileSync(path(`.bole-${ended}-0123abcd.part`), "half");
    writeFileSync(path(`.bole-${process.pid}-0123abcd.part`), "half");
    write(path("a.xlsx"), NEW, false);
    expect(readdirSync(folder).sort()).toEqual([`.bole-${process.pid}-0123abcd.part`, "a.xlsx"]);
  });

  it("is refused in a line when its name is too long, or is a link that leads back to itself", () => {
    symlinkSync(path("loop.xlsx"), path("loop.xlsx"));
    writeFileSync(path("a.xlsx"), "old");
    const free = (to: string) => () => mustBeFree({ from: path("a.xlsx"), to, overwrite: true, inPlace: true });
    const long = `${"a".repeat(300)}.xlsx`;
    expect(free(path(long))).toThrow("the name is longer than the disk takes");
    expect(free(path("loop.xlsx"))).toThrow("it is a link that leads back to itself");
    expect(() => read(path(long))).toThrow("the name is longer than the disk takes");
    expect(() => read(path("loop.xlsx"))).toThrow("it is a link that leads back to itself");
  });
});
