import type { ForestSpeciesName } from "./fia-wood.table";

const WORLD = "mean of the Global Wood Density Database, 2009";
const TABLE_13_5 = "Wood Handbook Table 13-5, worked back";
const INTERIOR_NORTH = "Wood Handbook Table 4-3, Douglas-fir, interior north";
const INTERIOR_WEST = "Wood Handbook Table 4-3, Douglas-fir, interior west";

/**
 * Figures that two sources print differently: shown on a species' card beside the figure the formulas use.
 *
 * @source GWDD, its mean by species where that is 0.03 or more away from the table in use
 * @source FPL-GTR-190, Tables 4-3 and 13-5
 * @source NPS log weights, green weight of yellow-poplar
 *
 * Columns: species; figure; its other value, in the unit of the card; where it stands.
 */
export const SECOND_OPINIONS = [
  ["ailanthus", "specific gravity", 0.519, WORLD],
  ["resin birch", "specific gravity", 0.53, WORLD],
  ["Atlantic white-cedar", "specific gravity", 0.38, WORLD],
  ["common persimmon", "specific gravity", 0.67, WORLD],
  ["yellow-poplar", "specific gravity", 0.35, WORLD],
  ["white spruce", "specific gravity", 0.33, WORLD],
  ["Sitka spruce", "specific gravity", 0.366, WORLD],
  ["American sycamore", "specific gravity", 0.415, WORLD],
  ["eastern cottonwood", "specific gravity", 0.411, WORLD],
  ["white oak", "specific gravity", 0.63, WORLD],
  ["southern red oak", "specific gravity", 0.577, WORLD],
  ["swamp chestnut oak", "specific gravity", 0.652, WORLD],
  ["water oak", "specific gravity", 0.632, WORLD],
  ["post oak", "specific gravity", 0.661, WORLD],
  ["live oak", "specific gravity", 0.856, WORLD],
  ["green ash", "radial", 4.9, TABLE_13_5],
  ["green ash", "tangential", 7.8, TABLE_13_5],
  ["sweet birch", "radial", 7.3, TABLE_13_5],
  ["sweet birch", "tangential", 9.5, TABLE_13_5],
  ["cedar elm", "radial", 5.3, TABLE_13_5],
  ["cedar elm", "tangential", 11.6, TABLE_13_5],
  ["Douglas-fir", "radial", 3.8, INTERIOR_NORTH],
  ["Douglas-fir", "tangential", 6.9, INTERIOR_NORTH],
  ["Douglas-fir", "volumetric", 10.7, INTERIOR_NORTH],
  ["Douglas-fir", "radial", 4.8, INTERIOR_WEST],
  ["Douglas-fir", "tangential", 7.5, INTERIOR_WEST],
  ["Douglas-fir", "volumetric", 11.8, INTERIOR_WEST],
  ["yellow-poplar", "green weight", 38, "National Park Service table of green log weights"],
] as const satisfies readonly (readonly [ForestSpeciesName, string, number, string])[];
