import { fahrenheit, inches, speciesName } from "../../cells/read";
import { spread, table } from "../../cells/spread";
import { heatHours } from "../../math/drying/heat-hours";
import { kilnSteps } from "../../math/drying/kiln-steps";

/**
 * A published kiln schedule, step by step, for the species that one was seen for: Oregon white oak.
 *
 * The source's abstract goes from the stage that ends at 30 % straight to equalizing. Other species have no schedule
 * here, because none was seen in print: ask your kiln's maker or a drying handbook.
 *
 * @customfunction KILNSTEPS
 * @returns Table: stage, moisture at which it ends, dry bulb and wet bulb in degrees Fahrenheit
 * @example =BOLE.KILNSTEPS("Oregon white oak", "4/4") gives {"stage","until moisture, %","dry bulb, °F","wet bulb, °F";"dry",40,110,106;"dry",30,110,104;"equalize","",180,145;"condition","",180,170}
 * @example =BOLE.KILNSTEPS("black walnut", "4/4") gives #N/A
 * @caution A hot chamber burns and wet heat scalds: keep to your kiln maker's limits and never go in while it runs.
 * @words kiln schedule, wet bulb, dry bulb
 */
export const KILNSTEPS = table(
  {
    /** Name of the species: Oregon white oak. */
    species: speciesName,
    /** Board thickness. */
    thicknessIn: inches,
  },
  (asked) => [
    ["stage", "until moisture, %", "dry bulb, °F", "wet bulb, °F"],
    ...kilnSteps(asked).map(({ stage, untilPercent, dryBulbF, wetBulbF }) => [stage, untilPercent, dryBulbF, wetBulbF]),
  ],
);

/**
 * Hours to heat the center of a square pine timber to 133 °F, the temperature that kills insects.
 *
 * The upper end of the printed 99 % interval, so that nearly every piece is through by then. For pine, stickered, in a
 * chamber at 160 °F; between printed values the logarithms are interpolated. The time the center must stay hot
 * (30 minutes by the rule for wood packaging) comes on top.
 *
 * @customfunction HEATHOURS
 * @returns Hours
 * @example =BOLE.HEATHOURS(8, 50, 160, 152) gives 13.37
 * @example =BOLE.HEATHOURS(8, 50, 150, 142) gives #N/A
 * @caution A plan, not a certificate: measure the temperature at the center of the thickest piece. Treated wood can be attacked again, and wet wood molds again. A hot chamber burns: never go in while it runs.
 * @words sterilize, heat treatment, kill bugs, powderpost beetle, insects
 */
export const HEATHOURS = spread(
  {
    /** Side of the square timber. 4 to 12. */
    sizeIn: inches,
    /** Temperature of the wood at the start. 40 to 60. */
    startF: fahrenheit,
    /** Dry bulb of the chamber: 160 or 71 C, the one the table was printed for. */
    chamberF: fahrenheit,
    /** Wet bulb of the chamber, degrees Fahrenheit; 148 to 158. */
    wetBulbF: fahrenheit,
  },
  heatHours,
);
