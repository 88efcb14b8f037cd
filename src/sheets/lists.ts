import { LOG_RULES } from "../math/logs/log-rules";
import { SPECIES_NAMES } from "../math/wood/species";
import type { ListName } from "./definition";

/** The names to choose from in an entry cell. */
export const LISTS: Readonly<Record<ListName, readonly string[]>> = {
  species: Object.keys(SPECIES_NAMES).sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1)),
  rules: Object.keys(LOG_RULES),
  roundings: ["none", "nearest", "nearest up", "down"],
  states: ["green", "air-dried", "kiln-dried rough"],
  patterns: ["live", "slab", "cant", "quarter", "timber"],
  thicknesses: ["4/4", "5/4", "6/4", "7/4", "8/4", "9/4", "10/4", "12/4", "14/4", "16/4"],
};

/** A list of ours by its name; a workbook's own list bears another. */
export function isListOfOurs(name: string): name is ListName {
  return Object.hasOwn(LISTS, name);
}

/** The names of our lists in a workbook that holds them all on a sheet. */
export const LIST_NAMES: Readonly<Record<ListName, string>> = {
  species: "Species_list",
  rules: "Rule_list",
  roundings: "Rounding_list",
  states: "State_list",
  patterns: "Pattern_list",
  thicknesses: "Thickness_list",
};
