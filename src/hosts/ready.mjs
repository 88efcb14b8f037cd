/*
 * Gets a fresh clone ready: installs the packages when some are missing or not those of the lock file, and, asked for
 * with the word "test", a browser. Plain JavaScript, since nothing is installed yet when it runs.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { packagesAreThere } from "./packages.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));

// From 20.15 on Node knows the checksum that every part of a workbook file bears.
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 15))
  stop(`Bole needs Node 20.15 or newer; this is Node ${process.versions.node}.`);

if (!packagesAreThere(root)) installPackages();
if (process.argv[2] === "test") await haveABrowser();

function installPackages() {
  console.error("Installing the packages Bole is built and tested with (once)…");
  const npm = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", 2, 2],
    shell: process.platform === "win32",
  });
  if (npm.status !== 0)
    stop("The packages could not be installed. Is there a network? Run the same command again; it starts afresh.");
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
