import type { SlabMethod } from "../../math/boards/slab";
import type { Entry } from "../../catalog/entry";
import { readCatalog } from "../../catalog/read-catalog";
import { LISTS } from "../lists";
import type { NameList } from "./sheets/reference/lists";

/** What the workbook is made from besides the invented yard. */
export interface Material {
  catalog: readonly Entry[];
  lists: readonly NameList[];
}

/** What a ticket prints of a slab's measuring; # stands for the count of widths. */
const METHOD_WORDS: Readonly<Record<SlabMethod, string>> = {
  mean: "mean of # widths",
  middle: "width at mid-length",
  narrow: "narrowest of # widths",
  third: "width a third from the narrow end",
  simpson: "Simpson's rule over # widths",
};

/** What the workbook is made from: the catalog as it stands, and the names that the functions know. */
export function readMaterial(): Material {
  return {
    catalog: readCatalog(),
    lists: [
      { name: "Species_list", heading: "Species", names: LISTS.species },
      { name: "Rule_list", heading: "Log rule", names: LISTS.rules },
      { name: "Rounding_list", heading: "Rounding of a diameter", names: LISTS.roundings },
      { name: "Method_list", heading: "Slab measured by", names: Object.keys(METHOD_WORDS) },
      { name: "Method_words", heading: "The same in words, # widths", names: Object.values(METHOD_WORDS) },
      { name: "State_list", heading: "State", names: LISTS.states },
      { name: "Thickness_list", heading: "Thickness", names: LISTS.thicknesses },
      { name: "Pattern_list", heading: "Sawing pattern", names: LISTS.patterns },
    ],
  };
}
