import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Answer } from "../../engine/engine";

/** A formula and its answer. */
export interface Answered {
  formula: string;
  value: Answer;
}

/** Even a slow machine answers any sensible formula by then; what takes longer may never end. */
const LIMIT_MS = 30_000;
/** So much memory may a formula take, so that one cannot end the program. */
const MOST_MEGABYTES = 1500;
/** A long chain of sums is answered step within step. */
const STACK_KILOBYTES = 6000;

/**
 * Answers formulas in their turn, each as soon as it is known. The engine works beside this program: where a formula
 * takes longer or more memory than there is, it is told so, and the next ones are asked of another engine.
 */
export async function* answersTo(
  batches: AsyncIterable<readonly string[]>,
  limitMs = LIMIT_MS,
): AsyncGenerator<Answered> {
  let calculator = startCalculator();
  try {
    for await (const formulas of batches)
      for (const formula of formulas) {
        const value = await calculator.ask(formula, limitMs);
        yield { formula, value: typeof value === "symbol" ? failure(value, limitMs) : value };
        if (typeof value !== "symbol") continue;
        calculator.stop();
        calculator = startCalculator();
      }
  } finally {
    calculator.stop();
  }
}

const TOO_LONG = Symbol("too long");
const ENDED = Symbol("ended");

function failure(how: symbol, limitMs: number): Answer {
  const message =
    how === TOO_LONG
      ? `This takes longer than ${limitMs / 1000} seconds to calculate: make its ranges or repetitions smaller.`
      : "This takes more memory to calculate than there is: make its ranges or repetitions smaller.";
  return { error: "#ERROR!", message };
}

interface Calculator {
  ask(formula: string, limitMs: number): Promise<Answer | symbol>;
  stop(): void;
}

/** An engine in a process of its own: whatever becomes of it, and whatever it says of that, this program goes on. */
function startCalculator(): Calculator {
  const process = fork(fileURLToPath(new URL("./answering-process.ts", import.meta.url)), {
    execArgv: ["--import", "tsx", `--max-old-space-size=${MOST_MEGABYTES}`, `--stack-size=${STACK_KILOBYTES}`],
    stdio: ["ignore", "ignore", "ignore", "ipc"],
    serialization: "advanced",
  });
  let ended = false;
  process.once("exit", () => (ended = true));
  const ask = (formula: string, limitMs: number) =>
    new Promise<Answer | symbol>((resolve) => {
      const end = (answer: Answer | symbol) => {
        clearTimeout(timer);
        process.off("message", heard).off("exit", gone);
        resolve(answer);
      };
      const heard = (answer: unknown) => end(answer as Answer);
      const gone = () => end(ENDED);
      const timer = setTimeout(() => end(TOO_LONG), limitMs);
      process.on("message", heard).on("exit", gone);
      if (ended) gone();
      else process.send(formula);
    });
  return { ask, stop: () => void process.kill("SIGKILL") };
}
