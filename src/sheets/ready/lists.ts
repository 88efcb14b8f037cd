import { LOG_RULES } from "../../math/logs/log-rules";
import { SPECIES_NAMES } from "../../math/wood/species";
import type { ListName } from "./ready-sheet";

/** The names to choose from in an entry cell. */
export const LISTS: Readonly<Record<ListName, readonly string[]>> = {
  species: Object.keys(SPECIES_NAMES).sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1)),
  rules: Object.keys(LOG_RULES),
  patterns: ["live", "slab", "cant", "quarter"],
  thicknesses: ["4/4", "5/4", "6/4", "8/4", "10/4", "12/4", "16/4"],
};
