import { named, oneOf, optional } from "../../cells/read";
import { table } from "../../cells/spread";
import { SPECIES_NAMES } from "../../math/wood/species";
import { speciesAnswer, SPECIES_FIGURES } from "../../math/wood/species-card";

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
 * @returns The table, the card, or the figure
 * @example =BOLE.SPECIES("walnut", "latin name") gives "Juglans nigra"
 * @example =BOLE.SPECIES("Oak, white", "tangential") gives 10.5
 * @example =BOLE.SPECIES("black walnut") gives a table of 15 rows
 * @example =BOLE.SPECIES("redwood", "tangential") gives #N/A
 * @example =BOLE.SPECIES("wallnut", "radial") gives #VALUE!
 * @words wood properties, density, which wood, tree names, green moisture, bark
 * @see WOODWEIGHT
 */
export const SPECIES = table(
  {
    /** Name of the species; the table of all when left out. */
    name: optional(oneOf(SPECIES_NAMES)),
    /** One figure: specific gravity, green moisture, green weight, tangential, bark and so on, as named on the card. */
    figure: named("property", optional(oneOf(SPECIES_FIGURES))),
  },
  speciesAnswer,
);
