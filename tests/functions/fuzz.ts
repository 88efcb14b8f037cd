import fc from "fast-check";
import { readCatalog } from "../../src/catalog/read-catalog";
import { faultOf, hostileCalls } from "./hostile";

/** npm run fuzz: many hostile calls of every function, or of those named; prints the slowest call of each. */
const CALLS = 20_000;
const SEED = 20260302;

const wanted = process.argv.slice(2);
let faults = 0;
for (const entry of readCatalog().filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
  let slowest = 0;
  const run = fc.check(
    fc.property(hostileCalls(entry), (given) => {
      const start = performance.now();
      const fault = faultOf(entry, given);
      slowest = Math.max(slowest, performance.now() - start);
      if (fault) throw new Error(fault);
    }),
    { seed: SEED, numRuns: CALLS },
  );
  if (run.failed) faults++;
  const outcome = run.failed ? `FAULT ${(run.errorInstance as Error).message}` : "sound";
  console.log(`${entry.name.padEnd(16)} ${run.numRuns} calls, slowest ${slowest.toFixed(1)} ms: ${outcome}`);
}
console.log(faults === 0 ? "No fault." : `${faults} functions with a fault.`);
process.exitCode = faults === 0 ? 0 : 1;
