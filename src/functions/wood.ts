import { feet, inches, moisture as percentMoisture, number, oneOf, optional } from "../cells/read";
import { spread, table } from "../cells/spread";
import { woodWeightLbPerFt3 } from "../math/wood/density";
import { driedSizeIn, GRAINS, greenSizeIn, shrinkagePercent, SIZE_GRAINS } from "../math/wood/shrinkage";
import { SPECIES_NAMES } from "../math/wood/species";
import { speciesAnswer, SPECIES_FIGURES } from "../math/wood/species-card";
import { BARK_CHOICES, logWeightLb, lumberWeightLb, WEIGHT_BOUNDS } from "../math/wood/weight";

/**
 * What the tables say of a species: the table of all, one species' card, or one figure.
 *
 * A species is found by its common name, by the trade's short name (walnut, hard maple), by its Latin name, or as the
 * handbook lists it (Oak, white). The short names are common practice and stand for the species most often meant.
 *
 * The card shows the unit and the source beside every figure. Where heartwood and sapwood hold different water it shows
 * the weight of both: a log lies between them. Where another document prints another figure the card carries both, and
 * the formulas use the upper one. Shrinkage marked "worked back" comes from the movement coefficients of Table 13-5;
 * an oak without a row of its own has that of the group its lumber is sold in.
 *
 * @customfunction SPECIES
 * @param [name] Name of the species; the table of all when left out.
 * @param [property] One figure: specific gravity, green moisture, green weight, tangential, bark and so on, as named on the card.
 * @returns The table, the card, or the figure
 * @example =BOLE.SPECIES("walnut", "latin name") gives "Juglans nigra"
 * @example =BOLE.SPECIES("Oak, white", "tangential") gives 10.5
 * @example =BOLE.SPECIES("black walnut") gives a table of 15 rows
 * @example =BOLE.SPECIES("redwood", "tangential") gives #N/A
 * @example =BOLE.SPECIES("wallnut", "radial") gives #VALUE!
 * @words wood properties, density, which wood, tree names, green moisture, bark
 * @see WOODWEIGHT
 */
export function SPECIES(name?: unknown[][], property?: unknown[][]): unknown[][] {
  return table(
    {
      name: optional(oneOf(SPECIES_NAMES, name, "name")),
      figure: optional(oneOf(SPECIES_FIGURES, property, "property")),
    },
    speciesAnswer,
  );
}

/**
 * Pounds in a cubic foot of a wood at a moisture; green when left out.
 *
 * Below 30 % the wood shrinks as it dries, so a cubic foot of dry wood holds more wood than a cubic foot of green.
 *
 * @customfunction WOODWEIGHT
 * @param species Name of the species.
 * @param [moisture] Percent of the oven-dry weight: 12, 12% and 0.12 are the same. Green when left out.
 * @returns Pounds per cubic foot
 * @example =BOLE.WOODWEIGHT("white oak") gives 63.0
 * @example =BOLE.WOODWEIGHT("white oak", 12) gives 47.5
 * @example =BOLE.WOODWEIGHT("white oak", 120%) gives #N/A
 * @caution Wood of one species varies from tree to tree, and heart and sap hold different water. An estimate for planning.
 * @words how heavy is wood, density, weight per cubic foot
 */
export function WOODWEIGHT(species: unknown[][], moisture?: unknown[][]): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      moisturePercent: optional(percentMoisture(moisture, "moisture")),
    },
    woodWeightLbPerFt3,
  );
}

/**
 * Pounds in a log, from its ends, length and species.
 *
 * Green when no moisture is given. The bounds are the customary 15 % either way: the wood varies, and so does the water.
 * The volume is the mean of the two end areas times the length. A log still in its bark weighs more: say with.
 *
 * A conifer's sapwood holds up to five times the water of its heartwood (incense-cedar 213 % against 40 %). So the
 * bounds of a green log go out to a log all of heartwood or all of sapwood, where the handbook has their moisture and
 * that lies beyond the 15 %. A small or young conifer is mostly sapwood: plan with the high bound, or give the sapwood's
 * moisture from the SPECIES card. For baldcypress, Douglas-fir, noble fir, western hemlock and western redcedar even the
 * typical figure is lighter than heartwood by the handbook: two sources differ, take the high one.
 *
 * @customfunction LOGWEIGHT
 * @param species Name of the species.
 * @param small Small-end diameter inside bark. A bare number is inches; 36 cm works too.
 * @param large Large-end diameter inside bark, not under the small end. A bare number is inches.
 * @param length Log length. A bare number is feet; 8'6" and 2.4 m work too.
 * @param [moisture] Percent of the oven-dry weight. Green when left out.
 * @param [bark] without (when left out) or with; bark is weighed green.
 * @param [bound] typical (when left out), low or high: 15 % either way, or farther where heart or sap of a green log is.
 * @returns Pounds
 * @example =BOLE.LOGWEIGHT("black walnut", 24, 30, 10) gives 2294
 * @example =BOLE.LOGWEIGHT("black walnut", 24, 30, 10, , "with", "high") gives 2909
 * @example =BOLE.LOGWEIGHT("western hemlock", 14, 18, 16) gives 930
 * @example =BOLE.LOGWEIGHT("western hemlock", 14, 18, 16, , , "high") gives 1606
 * @example =BOLE.LOGWEIGHT("black walnut", 24, 30, 10, 300) gives #N/A
 * @caution An estimate for planning the haul, never for rigging or for choosing lifting gear. Weigh the log, or lift with gear and people rated for far more. The high bound is not a safety factor.
 * @words how heavy is this log, trailer, lift, crane, weight of a log
 * @picture log
 */
export function LOGWEIGHT(
  species: unknown[][],
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  moisture?: unknown[][],
  bark?: unknown[][],
  bound?: unknown[][],
): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      moisturePercent: optional(percentMoisture(moisture, "moisture")),
      bark: optional(oneOf(BARK_CHOICES, bark, "bark"), "without"),
      bound: optional(oneOf(WEIGHT_BOUNDS, bound, "bound"), "typical"),
    },
    logWeightLb,
  );
}

/**
 * Pounds in sawn lumber at a moisture; green when left out.
 *
 * A board foot is a twelfth of a cubic foot of the green rough size, so drying takes out water but no wood: the tally
 * stays what it was on the saw.
 *
 * @customfunction LUMBERWEIGHT
 * @param species Name of the species.
 * @param boardfeet Board feet, counted on the green rough size.
 * @param [moisture] Percent of the oven-dry weight. Green when left out.
 * @returns Pounds
 * @example =BOLE.LUMBERWEIGHT("red oak", 500) gives 2667
 * @example =BOLE.LUMBERWEIGHT("red oak", 500, 8) gives 1572
 * @example =BOLE.LUMBERWEIGHT("red oak", 500, 200) gives #N/A
 * @caution An estimate for planning. Weigh the load before it goes on the road.
 * @words weight of boards, load of lumber, trailer
 */
export function LUMBERWEIGHT(species: unknown[][], boardfeet: unknown[][], moisture?: unknown[][]): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      boardFeet: number(boardfeet, "boardfeet"),
      moisturePercent: optional(percentMoisture(moisture, "moisture")),
    },
    lumberWeightLb,
  );
}

/**
 * Percent that a wood shrinks between two moistures; negative where it swells.
 *
 * Nothing shrinks above 30 %; below, in a straight line to oven dry. A single board may be off by several tenths of what
 * the table says.
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
