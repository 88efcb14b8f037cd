/** The lock file of npm, as far as it tells of licences. It is the same on every system, whatever is installed there. */
export interface Lock {
  packages: Record<string, { version?: string; license?: string }>;
}

export interface Package {
  name: string;
  version: string;
  licence: string;
}

/** Packages whose own description names no licence, with what their files say. Each was looked at by hand. */
const LOOKED_UP: Record<string, string> = {
  "@univerjs/telemetry": "Apache-2.0",
  "@microsoft/office-js": "Microsoft's own terms",
};

/** Every package that Bole is built and tested with, once for each version, by name. */
export function packagesIn(lock: Lock): Package[] {
  const packages = Object.entries(lock.packages).flatMap(([path, { version = "", license }]) => {
    const name = path.split("node_modules/").pop() ?? "";
    return path === "" ? [] : [{ name, version, licence: LOOKED_UP[name] ?? license ?? "none stated" }];
  });
  const once = new Map(packages.map((one) => [`${one.name} ${one.version}`, one]));
  return [...once.values()].sort((a, b) => order(a.name, b.name) || order(a.version, b.version));
}

/** The list as a text, the packages of each licence together. */
export function licenceList(lock: Lock): string {
  const packages = packagesIn(lock);
  const licences = [...new Set(packages.map(({ licence }) => licence))].sort(order);
  return [
    "The packages that Bole is built and tested with, by licence.",
    "Of them the add-in's files hold minisearch and stemmer, for the pane's search; all else in them is Bole's own.",
    "Written by npm run licences from package-lock.json.",
    ...licences.flatMap((licence) => [
      "",
      `${licence}:`,
      ...packages.filter((one) => one.licence === licence).map(({ name, version }) => `  ${name} ${version}`),
    ]),
    "",
  ].join("\n");
}

/** By the letters' codes, so that no language of the system changes the order. */
function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
