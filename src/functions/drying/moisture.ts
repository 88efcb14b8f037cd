import { moisture as percentMoisture, number, oneOf, pounds } from "../../cells/read";
import { spread } from "../../cells/spread";
import { moisturePercent, ovendryWeightLb, weightAtMoistureLb } from "../../math/drying/moisture";
import { SPECIES_NAMES } from "../../math/wood/species";
import { waterToLoseLb } from "../../math/wood/weight";

/**
 * Moisture content from a wet and an oven-dry weight.
 *
 * Percent of the oven-dry weight, so green wood passes 100. Bare numbers may be of any scale, grams or ounces too, when
 * both are; with a unit written behind one weight write it behind the other as well.
 *
 * @customfunction MOISTURE
 * @param wet Weight as it is. A bare number is pounds; 1.8 kg and 850 g work too.
 * @param dry Weight oven dry. A bare number is pounds here too.
 * @returns Percent of the oven-dry weight
 * @example =BOLE.MOISTURE(30, 20) gives 50
 * @example =BOLE.MOISTURE(52, 23.5) gives 121.3
 * @example =BOLE.MOISTURE(20, 30) gives #N/A
 * @words how wet is it, oven test, moisture section
 * @picture water
 */
export function MOISTURE(wet: unknown[][], dry: unknown[][]): unknown[][] {
  return spread({ wetLb: pounds(wet, "wet"), dryLb: pounds(dry, "dry") }, moisturePercent);
}

/**
 * The oven-dry weight in a piece of known moisture.
 *
 * @customfunction OVENDRYWEIGHT
 * @param wet Weight as it is. A bare number is pounds; 1.8 kg works too.
 * @param moisture Its moisture, percent of the oven-dry weight.
 * @returns Pounds
 * @example =BOLE.OVENDRYWEIGHT(30, 50) gives 20
 * @example =BOLE.OVENDRYWEIGHT(30, 0.5) gives 20
 * @example =BOLE.OVENDRYWEIGHT(30, 400) gives #N/A
 * @words sample board, dry weight
 * @see WEIGHTAT
 * @picture water
 */
export function OVENDRYWEIGHT(wet: unknown[][], moisture: unknown[][]): unknown[][] {
  return spread({ wetLb: pounds(wet, "wet"), moisturePercent: percentMoisture(moisture, "moisture") }, ovendryWeightLb);
}

/**
 * The weight a sample board will have at its target moisture.
 *
 * @customfunction WEIGHTAT
 * @param weight Weight now. A bare number is pounds; 1.8 kg works too.
 * @param moisture Moisture now, percent of the oven-dry weight.
 * @param target Moisture to reach, percent.
 * @returns Pounds
 * @example =BOLE.WEIGHTAT(4.5, 60, 8) gives 3.0375
 * @example =BOLE.WEIGHTAT(4.5, 60, 290) gives #N/A
 * @words sample board, when is it dry, target weight
 * @see OVENDRYWEIGHT
 * @picture water
 */
export function WEIGHTAT(weight: unknown[][], moisture: unknown[][], target: unknown[][]): unknown[][] {
  return spread(
    {
      weightLb: pounds(weight, "weight"),
      moisturePercent: percentMoisture(moisture, "moisture"),
      targetPercent: percentMoisture(target, "target"),
    },
    weightAtMoistureLb,
  );
}

/**
 * Pounds of water that must leave a stack of lumber.
 *
 * @customfunction WATERTOLOSE
 * @param species Name of the species.
 * @param boardfeet Board feet, counted on the green rough size.
 * @param from Moisture now, percent of the oven-dry weight.
 * @param to Moisture to reach, percent.
 * @returns Pounds
 * @example =BOLE.WATERTOLOSE("red oak", 1000, 80, 8) gives 2097
 * @example =BOLE.WATERTOLOSE("red oak", 1000, 8, 80) gives #N/A
 * @words dehumidifier, how much water, kiln size
 */
export function WATERTOLOSE(
  species: unknown[][],
  boardfeet: unknown[][],
  from: unknown[][],
  to: unknown[][],
): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      boardFeet: number(boardfeet, "boardfeet"),
      fromPercent: percentMoisture(from, "from"),
      toPercent: percentMoisture(to, "to"),
    },
    waterToLoseLb,
  );
}
