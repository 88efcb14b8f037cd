import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { printed } from "../../src/catalog/printing/printed";
import { isCellError } from "../../src/cells/error";
import { registry } from "../../src/functions/registry";
import { literalCall } from "../functions/literal-call";
import { readCatalog, ROOT } from "../../src/catalog/read-catalog";
import { SOURCES } from "../../src/math/sources";

const catalog = readCatalog();
const files = await printed(readFileSync(join(ROOT, "README.md"), "utf8"));

/** What a source may be besides a document of the bibliography. */
const NO_DOCUMENT = /^(?:plain (?:geometry|arithmetic)|common practice, no source|from memory)/;

describe("what is made from the functions' comments", () => {
  it.each([...files.keys()])("%s is fresh: npm run catalog would not change it", (path) => {
    expect(existsSync(join(ROOT, path)), `${path} is missing: npm run catalog`).toBe(true);
    expect(readFileSync(join(ROOT, path), "utf8").replaceAll("\r\n", "\n")).toBe(files.get(path));
  });

  it("leaves no page of a function that is gone", () => {
    const pages = readdirSync(join(ROOT, "assets/reference")).map((name) => `assets/reference/${name}`);
    expect(pages.filter((page) => !files.has(page))).toEqual([]);
  });

  it("functions.json passes the office-addin generator, and each entry has its help page", () => {
    const metadata = JSON.parse(files.get("assets/functions.json")!) as {
      allowErrorForDataTypeAny: boolean;
      functions: { id: string; name: string; description: string; helpUrl: string; parameters: { name: string }[] }[];
    };
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.functions.map(({ id }) => id)).toEqual(catalog.map(({ name }) => name));
    for (const { id, name, description, helpUrl, parameters } of metadata.functions) {
      expect(id).toMatch(/^[A-Z][A-Z0-9]{2,63}$/);
      expect(id, `${id} looks like a cell`).not.toMatch(/^[A-Z]{1,3}\d+$/);
      expect(name).toBe(id);
      expect(description.length).toBeLessThan(128);
      expect(files.has(new URL(helpUrl).pathname.replace("/reference/", "assets/reference/"))).toBe(true);
      expect(parameters.map((one) => one.name)).toEqual(
        catalog.find((entry) => entry.name === id)!.params.map((p) => p.name),
      );
    }
  });
});

describe("the example of each argument", () => {
  it.each(catalog)("of $name is one that answers", ({ name, params, examples }) => {
    const answered = examples.filter(({ result }) => !result.startsWith("#"));
    for (const [at, { example }] of params.entries()) {
      expect(example, `${name} has no example`).toBeTruthy();
      const answers = answered.map(({ formula }) => {
        const { given } = literalCall(formula);
        const cells = params.map((_, i) => given[i] ?? null);
        if (given[at] === undefined || given[at].flat().every((cell) => cell === null)) cells[at] = [[example]];
        return registry[name]!(...cells)[0]![0];
      });
      expect(
        answers.some((answer) => !isCellError(answer)),
        `${name}(${example!})`,
      ).toBe(true);
    }
  });
});

describe("where the numbers come from", () => {
  it.each(catalog.filter(({ topic }) => topic !== "about"))(
    "$name names its formula, and each formula its source",
    (entry) => {
      expect(entry.formulas.length).toBeGreaterThan(0);
      for (const { name, sources } of entry.formulas) {
        expect(sources.length, name).toBeGreaterThan(0);
        for (const source of sources)
          expect(
            NO_DOCUMENT.test(source) || Object.keys(SOURCES).some((key) => source.startsWith(key)),
            `${name}: no document of the bibliography begins "${source}"`,
          ).toBe(true);
      }
    },
  );

  it("cites every document of the bibliography somewhere", () => {
    const cited = catalog.flatMap(({ formulas }) => formulas.flatMap(({ sources }) => sources));
    const mathText = mathFiles().join("\n");
    const idle = Object.keys(SOURCES).filter((key) => !cited.some((s) => s.startsWith(key)) && !mathText.includes(key));
    expect(idle).toEqual([]);
  });

  it.each(catalog)("$name never passes what is from memory for published", ({ formulas, grade }) => {
    const remembered = formulas.some(({ sources }) => sources.some((source) => /^from memory/i.test(source)));
    expect(/from memory/.test(grade)).toBe(remembered);
  });

  it.each(catalog)("$name sees only functions that exist", ({ see }) => {
    for (const name of see) expect(catalog.map((entry) => entry.name)).toContain(name);
  });
});

function mathFiles(): string[] {
  const folder = join(ROOT, "src/math");
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.endsWith("sources.ts"))
    .map((file) => readFileSync(join(folder, file), "utf8"));
}
