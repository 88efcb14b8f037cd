import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { packagesAreThere } from "../../src/hosts/packages.mjs";

const wanted = {
  "": { version: "1.0.0" },
  "node_modules/saw": { version: "2.0.0" },
  "node_modules/saw-for-windows": { version: "2.0.0", optional: true },
};

/** A project's folder with its lock file and the list that npm leaves behind when it is done. */
function project(there?: object): string {
  const root = mkdtempSync(join(tmpdir(), "bole packages-"));
  writeFileSync(join(root, "package-lock.json"), JSON.stringify({ packages: wanted }));
  mkdirSync(join(root, "node_modules/saw"), { recursive: true });
  if (there) writeFileSync(join(root, "node_modules/.package-lock.json"), JSON.stringify({ packages: there }));
  return root;
}

describe("the packages", () => {
  it("are there once npm is done, without those that are for another system", () =>
    expect(packagesAreThere(project({ "node_modules/saw": { version: "2.0.0" } }))).toBe(true));
  it("are not there while npm was stopped half-way", () => expect(packagesAreThere(project())).toBe(false));
  it("are not there when one has another version", () =>
    expect(packagesAreThere(project({ "node_modules/saw": { version: "1.9.0" } }))).toBe(false));
  it("are not there when one is missing", () => expect(packagesAreThere(project({}))).toBe(false));
});
