/* Formulas from standard input, one a line; one line of JSON each on standard output. */
import { answersTo } from "./answering";
import { formulasFrom } from "./lines";

process.stdout.on("error", endWhenNothingIsTaken);
for await (const { formula, value } of answersTo(formulasFrom(process.stdin)))
  await print(`${JSON.stringify({ formula, value })}\n`);

/** Waits until the line is handed over, so that none is lost in a slow pipe. */
function print(line: string): Promise<void> {
  return new Promise((resolve) => process.stdout.write(line, () => resolve()));
}

/** `| head` stops reading early, which is no fault; a full disk is one. */
function endWhenNothingIsTaken({ code, message }: NodeJS.ErrnoException): void {
  if (code !== "EPIPE") console.error(`The answers cannot be written (${code ?? message}).`);
  process.exit(code === "EPIPE" ? 0 : 1);
}
