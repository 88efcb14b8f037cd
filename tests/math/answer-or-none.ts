import { NoAnswer } from "../../src/math/errors";

/** What a formula answers, or undefined where it has no answer; any other fault comes through. */
export function answerOrNone<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof NoAnswer) return undefined;
    throw error;
  }
}
