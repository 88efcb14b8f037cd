import { moisture, number, pounds, wood } from "../../cells/read";
import { spread } from "../../cells/spread";
import { moisturePercent, ovendryWeightLb, weightAtMoistureLb } from "../../math/drying/moisture";
import { waterToLoseLb } from "../../math/wood/weight";

/**
 * Moisture content from a wet and an oven-dry weight.
 *
 * Percent of the oven-dry weight, so green wood passes 100. Bare numbers may be of any scale, grams or ounces too, when
 * both are; with a unit written behind one weight write it behind the other as well.
 *
 * @customfunction MOISTURE
 * @returns Percent of the oven-dry weight
 * @example =BOLE.MOISTURE(30, 20) gives 50
 * @example =BOLE.MOISTURE(52, 23.5) gives 121.3
 * @example =BOLE.MOISTURE(20, 30) gives #N/A
 * @words how wet is it, oven test, moisture section
 * @picture water
 */
export const MOISTURE = spread(
  {
    /** Weight as it is. */
    wetLb: pounds,
    /** Weight oven dry. */
    dryLb: pounds,
  },
  moisturePercent,
);

/**
 * The oven-dry weight in a piece of known moisture.
 *
 * @customfunction OVENDRYWEIGHT
 * @returns Pounds
 * @example =BOLE.OVENDRYWEIGHT(30, 50) gives 20
 * @example =BOLE.OVENDRYWEIGHT(30, 0.5) gives 20
 * @example =BOLE.OVENDRYWEIGHT(30, 400) gives #N/A
 * @words sample board, dry weight
 * @see WEIGHTAT
 * @picture water
 */
export const OVENDRYWEIGHT = spread(
  {
    /** Weight as it is. */
    wetLb: pounds,
    /** Its moisture, percent of the oven-dry weight. */
    moisturePercent: moisture,
  },
  ovendryWeightLb,
);

/**
 * The weight a sample board will have at its target moisture.
 *
 * @customfunction WEIGHTAT
 * @returns Pounds
 * @example =BOLE.WEIGHTAT(4.5, 60, 8) gives 3.0375
 * @example =BOLE.WEIGHTAT(4.5, 60, 290) gives #N/A
 * @words sample board, when is it dry, target weight
 * @see OVENDRYWEIGHT
 * @picture water
 */
export const WEIGHTAT = spread(
  {
    /** Weight now. */
    weightLb: pounds,
    /** Moisture now, percent of the oven-dry weight. */
    moisturePercent: moisture,
    /** Moisture to reach, percent. */
    targetPercent: moisture,
  },
  weightAtMoistureLb,
);

/**
 * Pounds of water that must leave a stack of lumber.
 *
 * @customfunction WATERTOLOSE
 * @returns Pounds
 * @example =BOLE.WATERTOLOSE("red oak", 1000, 80, 8) gives 2097
 * @example =BOLE.WATERTOLOSE("red oak", 1000, 8, 80) gives #N/A
 * @words dehumidifier, how much water, kiln size
 */
export const WATERTOLOSE = spread(
  {
    /** Name of the species, or a specific gravity of your own from 0.1 to 1.4. */
    species: wood,
    /** Board feet, counted on the green rough size. */
    boardFeet: number,
    /** Moisture now, percent of the oven-dry weight. */
    fromPercent: moisture,
    /** Moisture to reach, percent. */
    toPercent: moisture,
  },
  waterToLoseLb,
);
