import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { SOURCES, sourcesFile } from "./printing/sources-file";
import { readCatalog, ROOT } from "./read-catalog";

/** Writes everything that is made from the functions' comments: npm run catalog. */
rmSync(join(ROOT, "assets/reference"), { recursive: true, force: true });
mkdirSync(join(ROOT, "assets/reference"), { recursive: true });
// The pages tell the steps behind an example, which WORKING takes from this file.
writeFileSync(join(ROOT, SOURCES), sourcesFile(readCatalog()));
const { printed } = await import("./printing/printed");
const files = await printed(readFileSync(join(ROOT, "README.md"), "utf8"));
for (const [path, text] of files) writeFileSync(join(ROOT, path), text);
console.log(`Wrote ${files.size} files: the catalog, functions.json, the README's table and the reference pages.`);
