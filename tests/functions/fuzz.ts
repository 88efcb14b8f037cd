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
      const fault = faultOf(entry, given);
      if (fault) throw new Error(fault);
      slowest = Math.max(
        slowest,
        quickestOfThree(() => faultOf(entry, given), slowest),
      );
    }),
    { seed: SEED, numRuns: CALLS },
  );
  if (run.failed) faults++;
  const outcome = run.failed ? `FAULT ${(run.errorInstance as Error).message}` : "sound";
  console.log(`${entry.name.padEnd(16)} ${run.numRuns} calls, slowest ${slowest.toFixed(1)} ms: ${outcome}`);
}
/** A call's time; one that looks slow is taken again, since a busy machine slows any call down now and then. */
function quickestOfThree(call: () => void, unlessUnder: number): number {
  let quickest = Infinity;
  for (let run = 0; run < 3 && quickest > unlessUnder; run++) {
    const start = performance.now();
    call();
    quickest = Math.min(quickest, performance.now() - start);
  }
  return quickest;
}

console.log(faults === 0 ? "No fault." : `${faults} functions with a fault.`);
process.exitCode = faults === 0 ? 0 : 1;
