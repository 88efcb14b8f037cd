import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { licenceList, packagesIn, type Lock } from "../../src/catalog/printing/licences";

const ROOT = resolve(import.meta.dirname, "../..");
const lock = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as Lock & {
  packages: Record<string, { dev?: boolean; devOptional?: boolean }>;
};
const about = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as Record<string, object | undefined>;

/** Licences that let anyone use, change and hand on the work. */
const FREE = [
  ...["MIT", "MIT/X11", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BlueOak-1.0.0", "Unlicense"],
  ...["CC0-1.0", "Python-2.0", "Zlib"],
];

/** For tools that are not in what is shipped: a change of theirs would have to be handed on, or their data named. */
const FOR_TOOLS = ["MPL-2.0", "CC-BY-4.0"];

/** Packages under none of these, each with why it may be here. */
const NAMED: Record<string, string> = {
  "@microsoft/office-js": "Microsoft's own terms: the tests load it, nothing of it is shipped or kept with Bole",
};

/** `(MIT OR GPL-3.0)` gives a choice, `(MIT AND Zlib)` asks for both. */
function isAllowed(licence: string): boolean {
  const plain = licence.replace(/[()]/g, "");
  const known = (one: string) => [...FREE, ...FOR_TOOLS].includes(one);
  return plain.split(" OR ").some((choice) => choice.split(" AND ").every(known));
}

describe("the licences of what Bole is built and tested with", () => {
  it("are listed as the lock file has them (npm run licences)", () => {
    expect(readFileSync(join(ROOT, "assets/licences.txt"), "utf8")).toBe(licenceList(lock));
  });

  it("are all free for anyone, or named here one by one", () => {
    const others = packagesIn(lock).filter(({ name, licence }) => !isAllowed(licence) && !NAMED[name]);
    expect(others).toEqual([]);
  });

  it("name nobody as an exception who is none", () => {
    const known = packagesIn(lock).filter(({ licence }) => !isAllowed(licence));
    expect(known.map(({ name }) => name)).toEqual(Object.keys(NAMED).sort());
  });

  it("are of tools only: what is shipped needs no package", () => {
    expect(about["dependencies"]).toBeUndefined();
    expect(about["optionalDependencies"]).toBeUndefined();
    const needed = Object.entries(lock.packages).filter(([path, one]) => path !== "" && !one.dev && !one.devOptional);
    expect(needed.map(([path]) => path)).toEqual([]);
  });

  it("are the same list on every system: packages for others than this one are in it too", () => {
    const names = packagesIn(lock).map(({ name }) => name);
    for (const system of ["linux-x64", "darwin-arm64", "win32-x64"]) expect(names).toContain(`@esbuild/${system}`);
  });

  it("list a package once for each version, whatever the order of the lock file", () => {
    const packages = Object.fromEntries(Object.entries(lock.packages).reverse());
    expect(licenceList({ packages })).toBe(licenceList(lock));
    const twice = {
      "": {},
      "node_modules/a": { version: "1", license: "MIT" },
      "node_modules/b/node_modules/a": { version: "1", license: "MIT" },
    };
    expect(packagesIn({ packages: twice })).toEqual([{ name: "a", version: "1", licence: "MIT" }]);
  });
});
