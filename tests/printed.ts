import { afterAll } from "vitest";

/** Counts the printed values that a test file holds against the formulas; once its tests have run, a line says how many. */
export function printedValuesOf(what: string): (checked?: number) => void {
  let total = 0;
  afterAll(() => console.log(`${what}: ${total} printed values checked`));
  return (checked = 1) => void (total += checked);
}
