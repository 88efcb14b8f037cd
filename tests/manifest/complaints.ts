import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { validateXML } from "xmllint-wasm";

/** The eight sizes Excel asks for. */
const ICON_SIZES = [16, 20, 24, 32, 40, 48, 64, 80];

const schema = (fileName: string) => ({
  fileName,
  contents: readFileSync(new URL(fileName, import.meta.url), "utf8"),
});

/** What is wrong with a manifest whose files stand in a folder that is served at an address; empty when all is well. */
export async function complaintsAbout(manifest: string, folder: string, address: string): Promise<string[]> {
  return [
    ...(await schemaComplaints(manifest)),
    ...resourceComplaints(manifest),
    ...addressComplaints(manifest, folder, address),
    ...lengthComplaints(manifest),
    ...iconComplaints(manifest, folder, address),
    ...runtimeComplaints(manifest),
  ];
}

async function schemaComplaints(manifest: string): Promise<string[]> {
  const { errors } = await validateXML({
    xml: { fileName: "manifest.xml", contents: manifest },
    schema: schema("officeapp.xsd"),
    preload: [schema("versionoverrides.xsd"), schema("basictypes.xsd")],
  });
  return errors.map(({ message }) => `schema: ${message}`);
}

/** Every resid names a resource, every resource is named once and used. */
function resourceComplaints(manifest: string): string[] {
  const wanted = valuesOf(manifest, /\sresid="([^"]*)"/g);
  const ids = resources(manifest).map(({ id }) => id);
  const controls = valuesOf(manifest, /<(?:Group|Control)\b[^>]*\sid="([^"]*)"/g);
  return [
    ...wanted.filter((id) => !ids.includes(id)).map((id) => `no resource ${id}`),
    ...ids.filter((id) => !wanted.includes(id)).map((id) => `resource ${id} is not used`),
    ...twice(ids).map((id) => `resource ${id} stands twice`),
    ...twice(controls).map((id) => `control ${id} stands twice`),
  ];
}

/** Every address is one of ours, and its file has been built. */
function addressComplaints(manifest: string, folder: string, address: string): string[] {
  return valuesOf(manifest, /DefaultValue="(https:[^"]*)"/g).flatMap((url) => {
    if (!url.startsWith(`${address}/`)) return [`${url} is not under ${address}`];
    return existsSync(fileOf(url, folder, address)) ? [] : [`${url} has no file`];
  });
}

function lengthComplaints(manifest: string): string[] {
  const long = manifest.slice(manifest.indexOf("<bt:LongStrings>"));
  const limits = [
    ...resources(manifest).map(({ id }) => ({ what: `id ${id}`, text: id, most: 32 })),
    ...resources(manifest).map(({ id, value }) => ({
      what: id,
      text: value,
      most: value.startsWith("https:") ? 2048 : long.includes(`id="${id}"`) ? 250 : 125,
    })),
    { what: "DisplayName", text: valueOf(manifest, /<DisplayName DefaultValue="([^"]*)"/), most: 125 },
    { what: "Description", text: valueOf(manifest, /<Description DefaultValue="([^"]*)"/), most: 250 },
  ];
  return limits.flatMap(({ what, text, most }) =>
    text.length >= 1 && text.length <= most ? [] : [`${what} has ${text.length} characters of at most ${most}`],
  );
}

/** Every icon has the size it is announced with, and every place that shows icons offers all eight. */
function iconComplaints(manifest: string, folder: string, address: string): string[] {
  const files = new Map(resources(manifest).map(({ id, value }) => [id, value]));
  const announced = [
    ...[...manifest.matchAll(/<bt:Image size="(\d+)" resid="([^"]*)"/g)].map(([, size, id = ""]) => [
      size,
      files.get(id),
    ]),
    ["32", valueOf(manifest, /<IconUrl DefaultValue="([^"]*)"/)],
    ["64", valueOf(manifest, /<HighResolutionIconUrl DefaultValue="([^"]*)"/)],
  ].flatMap(([size, url]) =>
    url?.startsWith(`${address}/`) ? [{ size: Number(size), path: fileOf(url, folder, address) }] : [],
  );
  const wrong = announced
    .filter(({ path }) => existsSync(path))
    .map(({ size, path }) => ({ size, path, real: pngSize(path) }))
    .filter(({ size, real }) => real !== `${size} x ${size}`)
    .map(({ size, path, real }) => `${path} is ${real}, not ${size} x ${size}`);
  const offered = [...manifest.matchAll(/<Icon>([^]*?)<\/Icon>/g)].map(([, icon = ""]) =>
    valuesOf(icon, /size="(\d+)"/g),
  );
  return [
    ...wrong,
    ...offered
      .flatMap((sizes) => ICON_SIZES.filter((size) => !sizes.includes(String(size))))
      .map((size) => `no icon of ${size}`),
  ];
}

/** Functions and pane share a runtime only when all three name one page, and Excel is told that it needs both parts. */
function runtimeComplaints(manifest: string): string[] {
  const pages = [
    valueOf(manifest, /<Runtime resid="([^"]*)" lifetime="long"/),
    valueOf(manifest, /<Page>\s*<SourceLocation resid="([^"]*)"/),
    valueOf(manifest, /<Action xsi:type="ShowTaskpane">[^]*?<SourceLocation resid="([^"]*)"/),
  ];
  const needed = ["SharedRuntime", "CustomFunctionsRuntime"];
  return [
    ...(new Set(pages).size === 1 && pages[0] ? [] : [`runtime, page and pane name ${pages.join(", ")}`]),
    ...needed
      .filter((name) => !manifest.includes(`<Set Name="${name}" MinVersion="1.1"/>`))
      .map((name) => `${name} is not asked for`),
  ];
}

/** The resources with their values: images, addresses and strings. */
function resources(manifest: string): { id: string; value: string }[] {
  const found = manifest.matchAll(/<bt:(?:Image|Url|String) id="([^"]*)" DefaultValue="([^"]*)"/g);
  return [...found].map(([, id = "", value = ""]) => ({ id, value }));
}

function fileOf(url: string, folder: string, address: string): string {
  return join(folder, url.slice(address.length));
}

/** Width and height stand in the first chunk of a PNG. */
function pngSize(path: string): string {
  const png = readFileSync(path);
  if (png.toString("latin1", 1, 4) !== "PNG") return "no PNG";
  return `${png.readUInt32BE(16)} x ${png.readUInt32BE(20)}`;
}

function valuesOf(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].map(([, value = ""]) => value);
}

function valueOf(text: string, pattern: RegExp): string {
  return pattern.exec(text)?.[1] ?? "";
}

function twice(names: string[]): string[] {
  return names.filter((name, i) => names.indexOf(name) !== i);
}
