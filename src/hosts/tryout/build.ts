import { existsSync, mkdirSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { takeTurn } from "./turn";

export const ROOT = fileURLToPath(new URL("../../../", import.meta.url));

/** Where the built page lies. */
export const PAGE_FOLDER = join(ROOT, ".cache/tryout");

/** What the built page is made from; it is built again when one of these is younger. */
const SOURCES = ["src", "package-lock.json"];

/** Builds the page unless it is there and fresh. `tell` hears what takes long. */
export async function buildPage(tell: (line: string) => void = () => undefined): Promise<void> {
  if (isFresh()) return;
  tell("Building the page; the first time takes about ten seconds…");
  // One build at a time: two would write the same files.
  const release = await turnToBuild();
  try {
    if (!isFresh()) await build();
  } finally {
    release();
  }
}

async function turnToBuild(): Promise<() => void> {
  try {
    mkdirSync(join(ROOT, ".cache"), { recursive: true });
    return await takeTurn(join(ROOT, ".cache/tryout-building"));
  } catch (fault) {
    const why = (fault as NodeJS.ErrnoException).code ?? String(fault);
    throw new Error(
      `The page has to be built, and nothing can be written in ${ROOT} (${why}). Copy the project to a folder of your own and start it there.`,
    );
  }
}

function isFresh(): boolean {
  const built = join(PAGE_FOLDER, "page.js");
  return existsSync(built) && statSync(built).mtimeMs > Math.max(...SOURCES.map((path) => youngest(join(ROOT, path))));
}

async function build(): Promise<void> {
  const [{ default: webpack }, { default: configuration }] = await Promise.all([
    import("webpack"),
    import("./webpack.config.js"),
  ]);
  const compiler = webpack(configuration);
  await new Promise<void>((resolve, reject) => {
    compiler.run((fault, stats) => {
      const faults = fault ? fault.message : stats?.hasErrors() ? stats.toString("errors-only") : "";
      compiler.close(() => (faults ? reject(new Error(`The page could not be built: ${faults}`)) : resolve()));
    });
  });
}

/** When the youngest file of a folder was changed. */
function youngest(path: string): number {
  const seen = statSync(path);
  if (!seen.isDirectory()) return seen.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => youngest(join(path, name))));
}
