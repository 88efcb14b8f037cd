import { DEVELOPMENT_ADDRESS } from "../address";
import { functionsJson } from "./functions-json";
import { readCatalog } from "../read-catalog";
import { withFunctionTable } from "./readme-table";
import { referencePages } from "../reference/pages";
import { REFERENCE_STYLE } from "../reference/style";
import { SOURCES, sourcesFile } from "./sources-file";

/** Every generated file, by its path from the project's folder. */
export async function printed(readme: string): Promise<Map<string, string>> {
  const catalog = readCatalog();
  const files = new Map<string, string>();
  files.set("src/catalog/catalog.json", `${JSON.stringify(catalog, null, 1)}\n`);
  files.set(SOURCES, sourcesFile(catalog));
  // A build for another address prints its own functions.json.
  files.set("assets/functions.json", functionsJson(catalog, DEVELOPMENT_ADDRESS));
  files.set("README.md", withFunctionTable(readme, catalog));
  for (const [name, html] of referencePages(catalog)) files.set(`assets/reference/${name}`, html);
  files.set("assets/reference/style.css", REFERENCE_STYLE);
  return files;
}
