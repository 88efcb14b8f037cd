import { NoAnswer } from "../../errors";
import { NEAR } from "../../rounding";
import { MOST_RUNS } from "./order-job";

/**
 * The lengths that a strip may have: every sum of cut lengths with a crosscut kerf between, up to the longest log,
 * shortest first.
 */
export function runsOf(cutsIn: readonly number[], crosscutIn: number, longestIn: number): number[] {
  const found: number[] = [];
  let next = [...new Set(cutsIn)].filter((cut) => cut <= longestIn + NEAR);
  while (next.length > 0) {
    for (const run of next) if (!found.some((other) => Math.abs(other - run) < SAME_RUN_IN)) found.push(run);
    mustBeFewRuns(found.length);
    const longer = next.flatMap((run) => cutsIn.map((cut) => run + crosscutIn + cut));
    next = [...new Set(longer)].filter(
      (run) => run <= longestIn + NEAR && !found.some((other) => Math.abs(other - run) < SAME_RUN_IN),
    );
  }
  return found.sort((a, b) => a - b);
}

/** Runs nearer than this are one: what parts them is the accident of binary. */
const SAME_RUN_IN = 1e-7;

/** Lengths in odd inches make more sums than can be weighed. */
export function mustBeFewRuns(runs: number): void {
  if (runs > MOST_RUNS)
    throw new NoAnswer(
      `order, length: wanted up to ${MOST_RUNS} sums of lengths that fit into the longest log, got ${runs} or more; ` +
        "give lengths in whole or half feet",
    );
}

/** The longest run that fits into a length, or -1. */
export function longestWithin(runsIn: readonly number[], lengthIn: number): number {
  let at = runsIn.length - 1;
  while (at >= 0 && runsIn[at]! > lengthIn + NEAR) at--;
  return at;
}
