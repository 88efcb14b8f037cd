import fc from "fast-check";
import { readCatalog } from "../../src/catalog/read-catalog";
import { registry } from "../../src/functions/registry";
import { faultOf, hostileCalls } from "./hostile";
import { zeroFault } from "./zero";

/** npm run fuzz: many hostile calls of every function, or of those named; prints the slowest call of each. Every call is asked for a silent zero too. */
const CALLS = 20_000;
const SEED = 20260302;

const wanted = process.argv.slice(2);
let faults = 0;
for (const entry of readCatalog().filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
  let slowest = 0;
  const run = fc.check(
    fc.property(hostileCalls(entry), (given) => {
      const fault = faultOf(entry, given) ?? silentZero(entry.name, given);
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

/** A zero that some argument of the call takes for something else without a word. */
function silentZero(name: string, given: unknown[]): string | undefined {
  const formula = registry[name]!;
  const cells = given.map((argument) => (Array.isArray(argument) ? (argument as unknown[][]) : null));
  return formula.takes.map((_, at) => zeroFault(formula, cells, at)).find(Boolean);
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
