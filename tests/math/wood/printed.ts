import { expect } from "vitest";
import { SPECIES_NAMES, SPECIES_TABLE, type SpeciesName } from "../../../src/math/wood/species";

export const EXACT = 1e-9;

/** The comparison of a test file with printed numbers, each of which is counted. */
export function comparisonCountedBy(checked: () => void) {
  return (found: number | undefined, printed: string | undefined, tolerance: number, what: string): void => {
    checked();
    expect(Math.abs(found! - Number(printed)), `${what}: ${found} where ${printed} is printed`).toBeLessThanOrEqual(
      tolerance,
    );
  };
}

/** The species whose row a handbook table heads so. */
export function speciesOf(heading: string): SpeciesName {
  const found = SPECIES_TABLE.find(({ name }) =>
    [name, ...SPECIES_NAMES[name]].some((spelling) => spelling.toLowerCase() === heading.toLowerCase()),
  );
  if (!found) throw new Error(`no species for the row ${heading}`);
  return found.name;
}
