import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** npm run bench: every measurement, one after the other, so that none disturbs another. */
const MEASUREMENTS = [
  "functions.ts",
  "cut-plan.ts",
  "searches.ts",
  "orders.ts",
  "engine.ts",
  "bundle.ts",
  "load.ts",
  "large-files.ts",
];

for (const file of MEASUREMENTS) {
  const path = fileURLToPath(new URL(file, import.meta.url));
  const run = spawnSync(process.execPath, ["--import", "tsx", path], { stdio: "inherit" });
  if (run.status !== 0) process.exitCode = 1;
}
