import { fahrenheit, inches, moisture, oneOf, optional, percent, speciesName } from "../../cells/read";
import { spread } from "../../cells/spread";
import { airDryDays, USUAL_YARD } from "../../math/drying/air-dry-days";
import { kilnDays } from "../../math/drying/kiln-days";

/**
 * Days to air dry lumber: a rough guess, from remembered days by species.
 *
 * How rough: the days for 1-inch lumber from green to 20 % are from memory, and between lumber piled in spring and lumber
 * piled in fall they differ by a factor of two to ten. What was seen in print is the meaning of that range, the
 * effect of thickness and temperature (for red oak in a kiln, stretched here to other woods and to yard temperatures)
 * and the equilibrium moisture. Typical is the geometric mean of fast and slow. To know your own stack, weigh it or read
 * it with a meter and use DRYRATE and DRYFORECAST.
 *
 * Held against what was measured: packages of 4/4 sugar maple in Upper Michigan took 40 to 205 days, 90 in the mean, where
 * this says 50 to 200, typically 100.
 *
 * @customfunction AIRDRYDAYS
 * @returns Days
 * @example =BOLE.AIRDRYDAYS("red oak", "4/4") gives 118
 * @example =BOLE.AIRDRYDAYS("red oak", "8/4", 80, 20, 60, 70, "fast") gives 233
 * @example =BOLE.AIRDRYDAYS("red oak", 1, 80, 10) gives #N/A
 * @example =BOLE.AIRDRYDAYS("sassafras", 1) gives #N/A
 * @words how long to dry, air drying, when is it ready, year per inch, how long to air dry, how long to dry a slab, drying time
 * @see DRYFORECAST
 */
export const AIRDRYDAYS = spread(
  {
    /** Name of the species. */
    species: speciesName,
    /** Board thickness. */
    thicknessIn: inches,
    /** Moisture it starts at, percent of the oven-dry weight; the species' green moisture when left out. */
    fromPercent: optional(moisture),
    /** Moisture to reach, of the oven-dry weight. */
    toPercent: optional(moisture, 20),
    /** Mean temperature of the drying season. */
    temperatureF: optional(fahrenheit, USUAL_YARD.temperatureF),
    /** Mean relative humidity. */
    humidityPercent: optional(percent, USUAL_YARD.humidityPercent),
    /** typical, fast (piled in good drying weather) or slow (piled too late in the year). */
    bound: optional(oneOf({ typical: [], fast: ["low"], slow: ["high"] }), "typical"),
  },
  airDryDays,
);

/**
 * Days to dry red oak in a kiln at steady temperature and humidity.
 *
 * The one wood a published time constant was seen for. It says nothing of checking: dry no faster than the wood allows.
 *
 * @customfunction KILNDAYS
 * @returns Days
 * @example =BOLE.KILNDAYS("red oak", 1, 85, 25, 150, 50) gives 4.5
 * @example =BOLE.KILNDAYS("black walnut", 1, 85, 25, 150, 50) gives #N/A
 * @caution Fast drying checks, honeycombs and casehardens thick oak. Follow a proven schedule and your kiln maker's limits.
 * @words kiln time, how long in the kiln
 */
export const KILNDAYS = spread(
  {
    /** Name of the species: red oak. */
    species: speciesName,
    /** Board thickness. */
    thicknessIn: inches,
    /** Moisture it starts at, percent of the oven-dry weight. */
    fromPercent: moisture,
    /** Moisture to reach, percent. */
    toPercent: moisture,
    /** Dry bulb. */
    temperatureF: fahrenheit,
    /** Relative humidity in percent. */
    humidityPercent: percent,
  },
  kilnDays,
);
