/* Formulas from standard input, one a line; one line of JSON each on standard output. */
import { formulasFrom } from "./lines";
import { startEngine, type Answer } from "../../engine/engine";
import { quietly } from "./quietly";

const engine = await startEngine();
process.stdout.on("error", endIfNobodyReads);
await quietly(async () => {
  for await (const formulas of formulasFrom(process.stdin)) await print(formulas, await engine.evaluate(formulas));
});
engine.stop();

/** Waits until the lines are handed over, so that none is lost in a slow pipe. */
function print(formulas: string[], answers: Answer[]): Promise<void> {
  const lines = formulas.map((formula, at) => `${JSON.stringify({ formula, value: answers[at] })}\n`);
  return new Promise((resolve) => process.stdout.write(lines.join(""), () => resolve()));
}

/** `| head` stops reading early, which is no fault. */
function endIfNobodyReads(fault: NodeJS.ErrnoException): void {
  if (fault.code !== "EPIPE") throw fault;
  process.exit(0);
}
