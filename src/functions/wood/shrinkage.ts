import { inches, moisture, oneOf, optional, speciesName } from "../../cells/read";
import { spread } from "../../cells/spread";
import { driedSizeIn, GRAINS, greenSizeIn, shrinkagePercent, SIZE_GRAINS } from "../../math/wood/shrinkage";

/** What DRIEDSIZE and GREENSIZE ask. */
const SIZE_IN_DRYING = {
  /** Name of the species. */
  species: speciesName,
  /** Size across the grain at the first moisture. */
  sizeIn: inches,
  /** Moisture it starts at, of the oven-dry weight. */
  fromPercent: moisture,
  /** Moisture it ends at, of the oven-dry weight. */
  toPercent: moisture,
  /** tangential (flat-sawn width) or radial (flat-sawn thickness, quarter-sawn width). */
  grain: optional(oneOf(SIZE_GRAINS), "tangential"),
};

/**
 * Percent that a wood shrinks between two moistures; negative where it swells.
 *
 * Nothing shrinks above 30 %; below, in a straight line to oven dry. A single board may be off by several tenths of what
 * the table says. All the way to oven dry it is the figure on the SPECIES card; oven dry is written "0%".
 *
 * @customfunction SHRINKAGE
 * @returns Percent of the size at the first moisture
 * @example =BOLE.SHRINKAGE("white oak", 60, 8) gives 7.70
 * @example =BOLE.SHRINKAGE("white oak", 60, 8, "radial") gives 4.11
 * @example =BOLE.SHRINKAGE("redwood", 60, 8) gives #N/A
 * @words movement, swelling, how much will it shrink, flat sawn, quarter sawn
 * @picture grain
 */
export const SHRINKAGE = spread(
  {
    /** Name of the species. */
    species: speciesName,
    /** Moisture it starts at, percent of the oven-dry weight: 30 and anything above give the same. */
    fromPercent: moisture,
    /** Moisture it ends at, percent. */
    toPercent: moisture,
    /** tangential (flat-sawn width), radial (quarter-sawn width) or volumetric. */
    grain: optional(oneOf(GRAINS), "tangential"),
  },
  shrinkagePercent,
);

/**
 * The size a piece dries to.
 *
 * @customfunction DRIEDSIZE
 * @returns Inches
 * @example =BOLE.DRIEDSIZE("hard maple", 10, 57, 8) gives 9.274
 * @example =BOLE.DRIEDSIZE("hard maple", 10, 57, 8, "quarter-sawn") gives 9.648
 * @example =BOLE.DRIEDSIZE("hard maple", 10, 300, 8) gives #N/A
 * @words dry size, board width after drying, slab shrink
 * @see GREENSIZE
 * @picture grain
 */
export const DRIEDSIZE = spread(SIZE_IN_DRYING, driedSizeIn);

/**
 * The size to saw green for a piece to dry to the size wanted.
 *
 * Shrinkage only: saw variation and planing come on top.
 *
 * @customfunction GREENSIZE
 * @returns Inches
 * @example =BOLE.GREENSIZE("white oak", "5/4", 68, 8, "radial") gives 1.304
 * @example =BOLE.GREENSIZE("white oak", 8, 68, 8) gives 8.667
 * @example =BOLE.GREENSIZE("pin oak", 8, 150, 8) gives #N/A
 * @words green thickness, oversize, allowance for shrinkage
 * @see DRIEDSIZE
 * @picture grain
 */
export const GREENSIZE = spread(
  {
    ...SIZE_IN_DRYING,
    /** Size wanted across the grain at the second moisture. */
    sizeIn: inches,
    /** Moisture it is sawn at, of the oven-dry weight. */
    fromPercent: moisture,
  },
  greenSizeIn,
);
