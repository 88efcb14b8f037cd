import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative, resolve } from "node:path";
import webpack from "webpack";
import { expect, it } from "vitest";
import { filesBeside } from "../../src/hosts/excel/files";

const ROOT = resolve(import.meta.dirname, "../..");
const CONFIGURATION = new URL("../../webpack.config.js", import.meta.url).href;

/** Every file that webpack reads for the add-in's scripts. */
async function bundledFiles(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "bole-shipped-"));
  const { default: configuration } = (await import(CONFIGURATION)) as {
    default: (env: object) => webpack.Configuration;
  };
  const compiler = webpack(configuration({ folder }));
  const files = new Set<string>();
  compiler.hooks.compilation.tap("shipped", (compilation) =>
    compilation.hooks.succeedModule.tap("shipped", (module) =>
      files.add(
        "resource" in module ? relative(ROOT, String(module.resource)).replaceAll("\\", "/") : module.identifier(),
      ),
    ),
  );
  await new Promise<void>((done, failed) =>
    compiler.run((fault, stats) => {
      const faults = fault?.message ?? (stats?.hasErrors() ? stats.toString("errors-only") : "");
      compiler.close(() => (faults ? failed(new Error(faults)) : done()));
    }),
  );
  rmSync(folder, { recursive: true });
  return [...files].sort();
}

it("what is shipped is made of Bole's own files, and of two packages for the pane's search, whose notices go with it", async () => {
  const files = await bundledFiles();
  expect(files).toEqual(
    expect.arrayContaining([
      "src/hosts/excel/runtime.ts",
      "src/hosts/excel/taskpane/taskpane.ts",
      "src/hosts/excel/offline/worker.ts",
    ]),
  );
  expect(files.length).toBeGreaterThan(100);
  const others = files.filter((file) => !/^(?:src\/.*|package\.json)$/.test(file));
  expect(new Set(others.map((file) => /^node_modules\/([^/]+)\//.exec(file)?.[1]))).toEqual(
    new Set(["minisearch", "stemmer"]),
  );
  const notices = String((await filesBeside("https://bole.test/addin"))["licences.txt"]);
  for (const holder of ["Luca Ongaro", "Titus Wormer"]) expect(notices).toContain(holder);
}, 240_000);
