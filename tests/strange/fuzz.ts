import fc from "fast-check";
import { startEngine } from "../../src/engine/engine";
import { faultOf } from "./faults";
import { habits } from "./workbook";

/** Part of npm run fuzz: workbooks in other programs' habits, calculated and copied, each compared by another reader. */
const FILES = 600;
const SEED = 20261126;

const engine = await startEngine();
const run = await fc.check(
  fc.asyncProperty(habits, async (one) => {
    const fault = await faultOf(one, engine);
    if (fault) throw new Error(fault);
  }),
  { seed: SEED, numRuns: FILES },
);
engine.stop();
console.log(
  run.failed
    ? `FAULT ${(run.errorInstance as Error).message} in ${JSON.stringify(run.counterexample)}`
    : `${run.numRuns} strange workbooks calculated and copied: sound`,
);
process.exitCode = run.failed ? 1 : 0;
