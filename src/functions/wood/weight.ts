import { inches, logLength, moisture, number, oneOf, optional, wood } from "../../cells/read";
import { spread } from "../../cells/spread";
import { woodWeightLbPerFt3 } from "../../math/wood/density";
import { BARK_CHOICES, logWeightLb, lumberWeightLb, WEIGHT_BOUNDS } from "../../math/wood/weight";

/**
 * Pounds in a cubic foot of a wood at a moisture; green when left out.
 *
 * Below 30 % the wood shrinks as it dries, so a cubic foot of dry wood holds more wood than a cubic foot of green.
 *
 * @customfunction WOODWEIGHT
 * @returns Pounds per cubic foot
 * @example =BOLE.WOODWEIGHT("white oak") gives 63.0
 * @example =BOLE.WOODWEIGHT("white oak", 12) gives 47.5
 * @example =BOLE.WOODWEIGHT("white oak", 120%) gives #N/A
 * @example =BOLE.WOODWEIGHT("London plane", 12) gives 42.4
 * @example =BOLE.WOODWEIGHT(0.55, 12) gives 42.1
 * @example =BOLE.WOODWEIGHT(0.55) gives #N/A
 * @caution Wood of one species varies from tree to tree, and heart and sap hold different water. An estimate for planning.
 * @words how heavy is wood, density, weight per cubic foot
 */
export const WOODWEIGHT = spread(
  {
    /** Name of the species, or a specific gravity of your own from 0.1 to 1.4. */
    species: wood,
    /** Moisture of the oven-dry weight; green when left out. */
    moisturePercent: optional(moisture),
  },
  woodWeightLbPerFt3,
);

/**
 * Pounds in a log from its species, ends and length: green and without bark unless you say otherwise.
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
 * Of a tree that stands in towns the bounds go out to the lightest and the heaviest of its records, with the least and
 * the most water of its genus. Where no moisture of its genus was seen (mulberry, ginkgo, eucalyptus), and for a specific
 * gravity of your own, a green log has no typical weight: ask for low or high, or give a moisture.
 *
 * @customfunction LOGWEIGHT
 * @returns Pounds
 * @example =BOLE.LOGWEIGHT("black walnut", 24, 30, 10) gives 2294
 * @example =BOLE.LOGWEIGHT("black walnut", 24, 30, 10, , "with", "high") gives 2909
 * @example =BOLE.LOGWEIGHT("western hemlock", 14, 18, 16) gives 930
 * @example =BOLE.LOGWEIGHT("western hemlock", 14, 18, 16, , , "high") gives 1606
 * @example =BOLE.LOGWEIGHT("black walnut", 24, 30, 10, 300) gives #N/A
 * @example =BOLE.LOGWEIGHT("London plane", 24, 30, 10) gives 2516
 * @example =BOLE.LOGWEIGHT("ginkgo", 24, 30, 10) gives #N/A
 * @example =BOLE.LOGWEIGHT("ginkgo", 24, 30, 10, , , "high") gives 2915
 * @caution An estimate for planning the haul, never for rigging or for choosing lifting gear. Weigh the log, or lift with gear and people rated for far more. The high bound is not a safety factor.
 * @words weight, how heavy is this log, trailer, lift, crane, weight of a log
 * @picture log
 */
export const LOGWEIGHT = spread(
  {
    /** Name of the species, or a specific gravity of your own from 0.1 to 1.4. */
    species: wood,
    /** Small-end diameter inside bark. */
    smallIn: inches,
    /** Large-end diameter inside bark, not under the small end. */
    largeIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Moisture of the oven-dry weight; green when left out. */
    moisturePercent: optional(moisture),
    /** without or with; bark is weighed green. */
    bark: optional(oneOf(BARK_CHOICES), "without"),
    /** typical, low or high: 15 % either way, or farther where heart, sap or records go. */
    bound: optional(oneOf(WEIGHT_BOUNDS), "typical"),
  },
  logWeightLb,
);

/**
 * Pounds in sawn lumber at a moisture; green when left out.
 *
 * A board foot is a twelfth of a cubic foot of the green rough size, so drying takes out water but no wood: the tally
 * stays what it was on the saw.
 *
 * @customfunction LUMBERWEIGHT
 * @returns Pounds
 * @example =BOLE.LUMBERWEIGHT("red oak", 500) gives 2667
 * @example =BOLE.LUMBERWEIGHT("red oak", 500, 8) gives 1572
 * @example =BOLE.LUMBERWEIGHT("red oak", 500, 200) gives #N/A
 * @caution An estimate for planning. Weigh the load before it goes on the road.
 * @words weight of boards, load of lumber, trailer, weight of a slab, how heavy is a slab, stack of boards
 */
export const LUMBERWEIGHT = spread(
  {
    /** Name of the species, or a specific gravity of your own from 0.1 to 1.4. */
    species: wood,
    /** Board feet, counted on the green rough size. */
    boardFeet: number,
    /** Moisture of the oven-dry weight; green when left out. */
    moisturePercent: optional(moisture),
  },
  lumberWeightLb,
);
