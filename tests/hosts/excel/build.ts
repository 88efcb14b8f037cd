import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

/** The address the tests build for; it exists only in the tests' browser. */
export const TEST_ADDRESS = "https://bole.test/addin";

const ROOT = resolve(import.meta.dirname, "../../..");
const CACHE = join(ROOT, ".cache/excel-build");

/** Everything that a build is made from. */
const INPUTS = ["src", "manifest", "assets/icons", "assets/reference", "webpack.config.js", "package.json"];

/** A build takes seconds; one that has not come after this many never will. */
const LONGEST_WAIT_MS = 180_000;

/** The built folder, made once for each state of the source: whichever test asks first builds, the others wait. */
export async function builtFolder(): Promise<string> {
  const folder = join(CACHE, fingerprint());
  if (existsSync(folder)) return folder;
  mkdirSync(CACHE, { recursive: true });
  if (isOursToBuild(folder)) build(folder);
  else await built(folder);
  return folder;
}

/** Builds beside the final place and moves it there whole, so that half a build is never seen. */
function build(folder: string): void {
  const started = `${folder}.started`;
  try {
    const webpack = join(ROOT, "node_modules/webpack/bin/webpack.js");
    const options = ["--env", `folder=${started}`, "--env", `address=${TEST_ADDRESS}`];
    execFileSync(process.execPath, [webpack, ...options], { cwd: ROOT, stdio: "pipe" });
    renameSync(started, folder);
    for (const path of oldBuilds()) rmSync(path, { recursive: true });
  } finally {
    rmSync(started, { recursive: true, force: true });
  }
}

/** Builds of other states of the source, made before yesterday. */
function oldBuilds(): string[] {
  const yesterday = Date.now() - 24 * 60 * 60 * 1000;
  return readdirSync(CACHE)
    .map((name) => join(CACHE, name))
    .filter((path) => statSync(path).mtimeMs < yesterday);
}

/** Making a folder succeeds for one asker only. A leftover of a broken run is cleared away. */
function isOursToBuild(folder: string): boolean {
  const started = `${folder}.started`;
  if (existsSync(started) && Date.now() - statSync(started).mtimeMs > LONGEST_WAIT_MS)
    rmSync(started, { recursive: true });
  try {
    mkdirSync(started);
    return true;
  } catch {
    return false;
  }
}

async function built(folder: string): Promise<void> {
  const end = Date.now() + LONGEST_WAIT_MS;
  while (!existsSync(folder)) {
    if (Date.now() > end || !existsSync(`${folder}.started`))
      throw new Error("Another test's build of the add-in failed");
    await pause(200);
  }
}

function fingerprint(): string {
  const hash = createHash("sha256");
  for (const path of INPUTS.flatMap((input) => filesUnder(join(ROOT, input))))
    hash.update(path).update(readFileSync(path));
  return hash.digest("hex").slice(0, 16);
}

/** The files under a folder, sorted, as full paths. A file stands for itself. */
export function filesUnder(path: string): string[] {
  if (statSync(path).isFile()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}
