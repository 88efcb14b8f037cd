import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { manifestFor } from "../../../manifest/manifest";
import about from "../../../package.json";
import { functionsJson } from "../../catalog/functions-json";
import { readCatalog } from "../../catalog/read-catalog";
import { referencePages } from "../../catalog/reference-pages";
import { REFERENCE_STYLE } from "../../catalog/reference-style";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const ICONS = fileURLToPath(new URL("../../../assets/icons/", import.meta.url));

/** All files of the built folder but the two bundles, by their path in it. */
export async function filesBeside(address: string): Promise<Record<string, string | Buffer>> {
  const catalog = readCatalog();
  const reference = [...referencePages(catalog), ["style.css", REFERENCE_STYLE] as const];
  const icons = readdirSync(ICONS).filter((name) => name.endsWith(".png"));
  return {
    "manifest.xml": manifestFor(address, about.version),
    "functions.json": await functionsJson(catalog, address),
    "taskpane.html": readFileSync(`${HERE}taskpane/taskpane.html`),
    "taskpane.css": readFileSync(`${HERE}taskpane/taskpane.css`),
    "help.html": readFileSync(`${HERE}help.html`),
    ...Object.fromEntries(reference.map(([name, text]) => [`reference/${name}`, text])),
    ...Object.fromEntries(icons.map((name) => [`icons/${name}`, readFileSync(ICONS + name)])),
  };
}
