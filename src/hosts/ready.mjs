/*
 * Gets a fresh clone ready: installs the packages when they are missing or older than the lock file, and, asked for
 * with the word "test", a browser. Plain JavaScript, since nothing is installed yet when it runs.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
const stamp = join(root, "node_modules/.ready");
const lock = createHash("sha256")
  .update(readFileSync(join(root, "package-lock.json")))
  .digest("hex");

const [major] = process.versions.node.split(".").map(Number);
if (major < 20) stop(`Bole needs Node 20 or newer; this is Node ${process.versions.node}.`);

if (!existsSync(stamp) || readFileSync(stamp, "utf8") !== lock) installPackages();
if (process.argv[2] === "test") await haveABrowser();

function installPackages() {
  console.error("Installing the packages Bole is built and tested with (once)…");
  const npm = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", 2, 2],
    shell: process.platform === "win32",
  });
  if (npm.status !== 0)
    stop("The packages could not be installed. Is there a network? Nothing was changed; run the command again.");
  writeFileSync(stamp, lock);
}

async function haveABrowser() {
  const { installedBrowser } = await import("./browser.mjs");
  if (installedBrowser()) return;
  const debianRoot = existsSync("/etc/debian_version") && process.getuid?.() === 0;
  if (!debianRoot)
    stop("The tests need Chrome, Edge or Chromium. Install one, or set BOLE_BROWSER to the path of its program.");
  console.error("Installing Chromium for the tests (once)…");
  const environment = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  try {
    for (const args of [
      ["update", "-qq"],
      ["install", "-y", "-qq", "--no-install-recommends", "chromium"],
    ])
      execFileSync("apt-get", args, { stdio: ["ignore", "ignore", 2], env: environment });
  } catch {
    stop(
      "Chromium could not be installed with apt-get. Is there a network? Install it by hand: apt-get install chromium",
    );
  }
}

function stop(why) {
  console.error(why);
  process.exit(1);
}
