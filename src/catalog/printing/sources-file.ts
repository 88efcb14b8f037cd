import { sourceRows } from "../about/source-rows";
import type { Entry } from "../entry";

/** Where SOURCE and WORKING find the formulas and their sources. */
export const SOURCES = "src/catalog/sources.json";

export function sourcesFile(catalog: readonly Entry[]): string {
  return `${JSON.stringify(sourceRows(catalog), null, 1)}\n`;
}
