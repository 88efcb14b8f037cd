import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { checkedAddress, manifestFor } from "../../../manifest/manifest";
import about from "../../../package.json";
import { functionsJson } from "../../catalog/printing/functions-json";
import { readCatalog } from "../../catalog/read-catalog";
import { planDrawing } from "../../functions/plan-drawing";
import { installScripts } from "./install/scripts";
import { sampleShown } from "./site/sample-shown";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const PACKAGES = fileURLToPath(new URL("../../../node_modules/", import.meta.url));
const ASSETS = fileURLToPath(new URL("../../../assets/", import.meta.url));

/**
 * Excel on the web fetches functions.json from a page of its own (OfficeDev/office-js-docs-pr issue 1920), so the host
 * must allow that. Many static hosts do so by themselves or read this file; others have a setting for it.
 */
const HEADERS = "/*\n  Access-Control-Allow-Origin: *\n";

/** All files of the built folder but the two bundles, by their path in it. */
export async function filesBeside(address: string): Promise<Record<string, string | Buffer>> {
  return {
    "manifest.xml": manifestFor(address, about.version),
    "functions.json": functionsJson(readCatalog(), address),
    "index.html": firstPage(),
    "index.css": readFileSync(`${HERE}site/index.css`),
    "end-view.svg": endView(),
    "taskpane.html": readFileSync(`${HERE}taskpane/taskpane.html`),
    "taskpane.css": readFileSync(`${HERE}taskpane/taskpane.css`),
    "theme.css": readFileSync(`${HERE}../pane/theme.css`),
    "pane.css": readFileSync(`${HERE}../pane/pane.css`),
    "answers.css": readFileSync(`${HERE}../pane/answers.css`),
    "licences.txt": shippedLicences(),
    _headers: HEADERS,
    "help.html": readFileSync(`${HERE}help.html`),
    ...installScripts(checkedAddress(address)),
    ...assets("", /\.xlsx$/),
    ...assets("icons/", /\.png$/),
    ...assets("reference/", /./),
  };
}

/** The first page with pieces of the sample in their place. */
function firstPage(): string {
  const page = readFileSync(`${HERE}site/index.html`, "utf8");
  return page.replace("<!-- pieces of the sample -->", sampleShown(readFileSync(`${ASSETS}bole-sample-values.xlsx`)));
}

/** The picture on the first page: the plan that its words speak of. */
function endView(): string {
  const log = [[[30]], [[12]], [["4/4"], ["6/4"], ["8/4"]], [["1/16"]]];
  return planDrawing(log)!.beside;
}

/** What the pane's search is built on, and the notice that its licences ask for. */
const SHIPPED = ["minisearch/LICENSE.txt", "stemmer/license"];

function shippedLicences(): string {
  const notices = SHIPPED.map(
    (path) => `${path.split("/")[0]}\n\n${readFileSync(`${PACKAGES}${path}`, "utf8").trim()}\n`,
  );
  return ["The pane's search is built on these packages.\n", ...notices].join("\n");
}

function assets(folder: string, wanted: RegExp): Record<string, Buffer> {
  const names = readdirSync(ASSETS + folder).filter((name) => wanted.test(name));
  return Object.fromEntries(names.map((name) => [folder + name, readFileSync(ASSETS + folder + name)]));
}
