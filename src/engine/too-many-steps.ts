import { tokensOf } from "../formula/tokens";

/** The engine goes down a step within a step; with 4,000 of them, which Excel takes, it falls. */
export const MOST_STEPS = 2000;

/** Whether a formula is a longer chain of sums, or a deeper nest of brackets, than the engine can go down. */
export function hasTooManySteps(formula: string): boolean {
  return formula.length > MOST_STEPS && tokensOf(formula).filter(({ kind }) => kind === "sign").length > MOST_STEPS;
}
