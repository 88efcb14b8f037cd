import type { SpeciesName } from "../wood/species";

const HICKORIES = { row: "Hickory", fast: 60, slow: 200 };
const NORTHERN_RED_OAKS = { row: "Oak, northern red", fast: 70, slow: 200 };
const NORTHERN_WHITE_OAKS = { row: "Oak, northern white", fast: 80, slow: 250 };
const SOUTHERN_RED_OAKS = { row: "Oak, southern red (lowland)", fast: 100, slow: 300 };
const ASPENS = { row: "Aspen", fast: 50, slow: 150 };

/**
 * Days for 1-inch lumber to air dry from green to 20 %, in the region where the species is cut.
 *
 * The meaning of the two ends was seen in print (Technical Note 233): the fast end is lumber piled in good drying
 * weather, the slow end lumber piled too late in the year, which waits for the next spring. The days were not seen: they
 * are the note's table as remembered.
 *
 * @source from memory: the days, and which species share a row
 */
export const AIR_DRYING_DAYS: Partial<Record<SpeciesName, { row: string; fast: number; slow: number }>> = {
  "red alder": { row: "Alder, red", fast: 20, slow: 180 },
  "black ash": { row: "Ash, black", fast: 60, slow: 200 },
  "white ash": { row: "Ash, white", fast: 60, slow: 200 },
  "quaking aspen": ASPENS,
  "bigtooth aspen": ASPENS,
  "American basswood": { row: "Basswood, American", fast: 40, slow: 150 },
  "American beech": { row: "Beech, American", fast: 70, slow: 200 },
  "paper birch": { row: "Birch, paper", fast: 40, slow: 200 },
  "yellow birch": { row: "Birch, yellow", fast: 70, slow: 200 },
  butternut: { row: "Butternut", fast: 60, slow: 200 },
  "black cherry": { row: "Cherry, black", fast: 70, slow: 200 },
  "eastern cottonwood": { row: "Cottonwood, eastern", fast: 50, slow: 150 },
  "American elm": { row: "Elm, American", fast: 50, slow: 150 },
  hackberry: { row: "Hackberry", fast: 30, slow: 150 },
  "shagbark hickory": HICKORIES,
  "shellbark hickory": HICKORIES,
  "mockernut hickory": HICKORIES,
  "pignut hickory": HICKORIES,
  "bitternut hickory": HICKORIES,
  "red maple": { row: "Maple, red", fast: 30, slow: 120 },
  "silver maple": { row: "Maple, silver", fast: 30, slow: 120 },
  "sugar maple": { row: "Maple, sugar", fast: 50, slow: 200 },
  "northern red oak": NORTHERN_RED_OAKS,
  "black oak": NORTHERN_RED_OAKS,
  "pin oak": NORTHERN_RED_OAKS,
  "scarlet oak": NORTHERN_RED_OAKS,
  "white oak": NORTHERN_WHITE_OAKS,
  "bur oak": NORTHERN_WHITE_OAKS,
  "swamp white oak": NORTHERN_WHITE_OAKS,
  "southern red oak": SOUTHERN_RED_OAKS,
  "water oak": SOUTHERN_RED_OAKS,
  "willow oak": SOUTHERN_RED_OAKS,
  "laurel oak": SOUTHERN_RED_OAKS,
  "American sycamore": { row: "Sycamore, American", fast: 30, slow: 150 },
  blackgum: { row: "Tupelo, black", fast: 70, slow: 200 },
  "black walnut": { row: "Walnut, black", fast: 70, slow: 200 },
  "black willow": { row: "Willow, black", fast: 30, slow: 150 },
  "yellow-poplar": { row: "Yellow-poplar", fast: 40, slow: 150 },
  baldcypress: { row: "Baldcypress", fast: 100, slow: 300 },
  "eastern hemlock": { row: "Hemlock, eastern", fast: 90, slow: 200 },
  "eastern white pine": { row: "Pine, eastern white", fast: 60, slow: 200 },
  "ponderosa pine": { row: "Pine, ponderosa", fast: 15, slow: 150 },
  "red pine": { row: "Pine, red", fast: 40, slow: 200 },
  "red spruce": { row: "Spruce, red", fast: 30, slow: 120 },
};
