import { inches, moisture as percentMoisture, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { driedSizeIn, GRAINS, greenSizeIn, shrinkagePercent, SIZE_GRAINS } from "../../math/wood/shrinkage";
import { SPECIES_NAMES } from "../../math/wood/species";

/**
 * Percent that a wood shrinks between two moistures; negative where it swells.
 *
 * Nothing shrinks above 30 %; below, in a straight line to oven dry. A single board may be off by several tenths of what
 * the table says. All the way to oven dry it is the figure on the SPECIES card; a 0 typed here would be a blank.
 *
 * @customfunction SHRINKAGE
 * @param species Name of the species.
 * @param from Moisture it starts at, percent of the oven-dry weight: 30 and anything above give the same.
 * @param to Moisture it ends at, percent.
 * @param [grain] tangential (flat-sawn width; when left out), radial (quarter-sawn width) or volumetric.
 * @returns Percent of the size at the first moisture
 * @example =BOLE.SHRINKAGE("white oak", 60, 8) gives 7.70
 * @example =BOLE.SHRINKAGE("white oak", 60, 8, "radial") gives 4.11
 * @example =BOLE.SHRINKAGE("redwood", 60, 8) gives #N/A
 * @words movement, swelling, how much will it shrink, flat sawn, quarter sawn
 * @picture grain
 */
export function SHRINKAGE(species: unknown[][], from: unknown[][], to: unknown[][], grain?: unknown[][]): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      fromPercent: percentMoisture(from, "from"),
      toPercent: percentMoisture(to, "to"),
      grain: optional(oneOf(GRAINS, grain, "grain"), "tangential"),
    },
    shrinkagePercent,
  );
}

/**
 * The size a piece dries to.
 *
 * @customfunction DRIEDSIZE
 * @param species Name of the species.
 * @param size Size across the grain at the first moisture. A bare number is inches.
 * @param from Moisture it starts at, percent of the oven-dry weight.
 * @param to Moisture it ends at, percent.
 * @param [grain] tangential (flat-sawn width; when left out) or radial (flat-sawn thickness, quarter-sawn width).
 * @returns Inches
 * @example =BOLE.DRIEDSIZE("hard maple", 10, 57, 8) gives 9.274
 * @example =BOLE.DRIEDSIZE("hard maple", 10, 57, 8, "quarter-sawn") gives 9.648
 * @example =BOLE.DRIEDSIZE("hard maple", 10, 300, 8) gives #N/A
 * @words dry size, board width after drying, slab shrink
 * @see GREENSIZE
 * @picture grain
 */
export function DRIEDSIZE(
  species: unknown[][],
  size: unknown[][],
  from: unknown[][],
  to: unknown[][],
  grain?: unknown[][],
): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      sizeIn: inches(size, "size"),
      fromPercent: percentMoisture(from, "from"),
      toPercent: percentMoisture(to, "to"),
      grain: optional(oneOf(SIZE_GRAINS, grain, "grain"), "tangential"),
    },
    driedSizeIn,
  );
}

/**
 * The size to saw green for a piece to dry to the size wanted.
 *
 * Shrinkage only: saw variation and planing come on top.
 *
 * @customfunction GREENSIZE
 * @param species Name of the species.
 * @param size Size wanted across the grain at the second moisture. A bare number is inches.
 * @param from Moisture it is sawn at, percent of the oven-dry weight.
 * @param to Moisture it will end at, percent.
 * @param [grain] tangential (flat-sawn width; when left out) or radial (flat-sawn thickness, quarter-sawn width).
 * @returns Inches
 * @example =BOLE.GREENSIZE("white oak", "5/4", 68, 8, "radial") gives 1.304
 * @example =BOLE.GREENSIZE("white oak", 8, 68, 8) gives 8.667
 * @example =BOLE.GREENSIZE("pin oak", 8, 150, 8) gives #N/A
 * @words green thickness, oversize, allowance for shrinkage
 * @see DRIEDSIZE
 * @picture grain
 */
export function GREENSIZE(
  species: unknown[][],
  size: unknown[][],
  from: unknown[][],
  to: unknown[][],
  grain?: unknown[][],
): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      sizeIn: inches(size, "size"),
      fromPercent: percentMoisture(from, "from"),
      toPercent: percentMoisture(to, "to"),
      grain: optional(oneOf(SIZE_GRAINS, grain, "grain"), "tangential"),
    },
    greenSizeIn,
  );
}
