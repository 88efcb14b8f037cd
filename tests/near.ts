import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = resolve(import.meta.dirname, "..");

/** Runs the tests nearest to what has changed since the last commit; the whole of `npm test` is for when it is done. */
function main(): number {
  const near = [...new Set(changedFiles().flatMap((file) => testsNear(file, existsInProject)))];
  if (near.length === 0) {
    console.log("Nothing that has tests near it has changed since the last commit.");
    return 0;
  }
  const vitest = join(ROOT, "node_modules/vitest/vitest.mjs");
  const run = spawnSync(process.execPath, [vitest, "run", "--config", "tests/vitest.config.ts", ...near], {
    cwd: ROOT,
    stdio: "inherit",
  });
  return run.status ?? 1;
}

/**
 * The tests to run for a changed file: tests/x/y.test.ts for src/x/y.ts, since the tests stand as the source does. A file
 * without a test of its own has those of its folder, or else of the nearest folder above that has any.
 */
export function testsNear(file: string, exists: (path: string) => boolean): string[] {
  if (file.endsWith(".test.ts")) return exists(file) ? [file] : [];
  if (!/^(?:src|tests)\/.*\.ts$/.test(file)) return [];
  const beside = file.replace(/^src\//, "tests/");
  const own = beside.replace(/\.ts$/, ".test.ts");
  if (exists(own)) return [own];
  for (let folder = dirname(beside); folder !== "tests" && folder !== "."; folder = dirname(folder))
    if (exists(folder)) return [`${folder}/`];
  return [];
}

function changedFiles(): string[] {
  const git = (...words: string[]) => execFileSync("git", words, { cwd: ROOT, encoding: "utf8" });
  const listed = git("diff", "--name-only", "HEAD") + git("ls-files", "--others", "--exclude-standard");
  return listed.split("\n").filter(Boolean);
}

/** Whether a file is there, or a folder that holds tests. */
function existsInProject(path: string): boolean {
  const there = join(ROOT, path);
  if (!existsSync(there)) return false;
  return (
    path.endsWith(".ts") || readdirSync(there, { recursive: true }).some((name) => String(name).endsWith(".test.ts"))
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main();
