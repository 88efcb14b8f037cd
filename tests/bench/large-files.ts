import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { unzipSync, zipSync } from "fflate";
import { startEngine, type Engine } from "../../src/engine/engine";
import { converted } from "../../src/hosts/terminal/file/convert";
import { recalculated } from "../../src/hosts/terminal/file/recalc";
import { shared } from "../../src/hosts/terminal/file/share";
import { LARGE } from "./large-workbooks";

/** What recalc, share and convert cost with large workbooks, each in a process of its own, beside unpacking and packing the same file. */
const WORK = {
  recalc: recalculated,
  share: shared,
  convert: (bytes: Uint8Array, _engine: Engine, at: Date) => converted(bytes, at, "online"),
};
const AT = new Date("2026-03-01T14:05:00Z");
const KILOBYTES_IN_MEGABYTE = 1024;
const own = fileURLToPath(import.meta.url);

const [work, name] = process.argv.slice(2);
if (work && name) await once(work as keyof typeof WORK, name);
else
  for (const name of Object.keys(LARGE))
    for (const work of Object.keys(WORK)) {
      const run = spawnSync(process.execPath, ["--import", "tsx", own, work, name], { stdio: "inherit" });
      if (run.status !== 0) process.exitCode = 1;
    }

async function once(work: keyof typeof WORK, name: string): Promise<void> {
  const bytes = LARGE[name]!();
  const packing = await seconds(() => zipSync(unzipSync(bytes)));
  const engine = await startEngine();
  const took = await seconds(() => WORK[work](bytes, engine, AT));
  engine.stop();
  const peak = Math.round(process.resourceUsage().maxRSS / KILOBYTES_IN_MEGABYTE);
  console.log(
    `${work}, ${name}: ${took.toFixed(1)} s, at most ${peak} MB; unpacking and packing alone ${packing.toFixed(1)} s`,
  );
}

async function seconds(work: () => unknown): Promise<number> {
  const started = performance.now();
  await work();
  return (performance.now() - started) / 1000;
}
