import { named, oneOf, optional, speciesName } from "../../cells/read";
import { table } from "../../cells/spread";
import { speciesAnswer, SPECIES_FIGURES } from "../../math/wood/species-card";

/**
 * What the tables say of a species: the table of all, one species' card, or one figure.
 *
 * A species is found by its common name, by the trade's name (hard maple, red oak), by its Latin name, or as the handbook
 * lists it (Oak, white). The trade's names are common practice and stand for the species most often meant. The bare name
 * of a genus (oak, walnut) stands for none: the message lists its species with their green weights.
 *
 * Of trees that stand in towns (Norway maple, London plane) the density only was seen, and their green moisture is that
 * of their genus or unknown. "evidence" says how strong each species' density is: one record, or records that lie far
 * apart, are weak.
 *
 * The card shows the unit and the source beside every figure. Where heartwood and sapwood hold different water it shows
 * the weight of both: a log lies between them. Where another document prints another figure the card carries both, and
 * the formulas use the upper one. Shrinkage marked "worked back" comes from the movement coefficients of Table 13-5;
 * an oak without a row of its own has that of the group its lumber is sold in.
 *
 * @customfunction SPECIES
 * @returns The table, the card, or the figure
 * @example =BOLE.SPECIES("hard maple", "latin name") gives "Acer saccharum"
 * @example =BOLE.SPECIES("Oak, white", "tangential") gives 10.5
 * @example =BOLE.SPECIES("black walnut") gives a table of 19 rows
 * @example =BOLE.SPECIES("London plane", "evidence") gives "fair: mean of 4 records"
 * @example =BOLE.SPECIES("walnut", "latin name") gives #VALUE!
 * @example =BOLE.SPECIES("redwood", "tangential") gives #N/A
 * @example =BOLE.SPECIES("wallnut", "radial") gives #VALUE!
 * @words specific gravity, wood properties, density, which wood, tree names, green moisture, bark, town trees, street trees, urban logs, compare woods, wood data
 * @see WOODWEIGHT
 */
export const SPECIES = table(
  {
    /** Name of the species; the table of all when left out. */
    name: optional(speciesName),
    /** One figure: specific gravity, green moisture, green weight, tangential, bark and so on, as named on the card. */
    figure: named("property", optional(oneOf(SPECIES_FIGURES))),
  },
  speciesAnswer,
);
