import { mustBeAtLeast, mustBeBetween } from "../errors";
import { hairUnder } from "../rounding";

/**
 * More than any wood of the species table can hold: 280 % by FPL-GTR-282, Eq 4-3 at the lightest specific gravity, 0.29.
 * A moisture above it is a slip, such as two weights of different pieces.
 */
export const MOST_MOISTURE_PCT = 280;

/**
 * Moisture content in percent of the oven-dry weight, from a wet and an oven-dry weight. Above 100 % is common in green
 * wood.
 *
 * @formula MC = max(0, (wetLb - dryLb) / dryLb * 100)
 * @source Bousquet lumber drying, a 30 lb board with 10 lb of water
 * @range wet not under dry; the answer up to 280 %
 */
export function moisturePercent({ wetLb, dryLb }: { wetLb: number; dryLb: number }): number {
  mustBeAtLeast(hairUnder(dryLb), wetLb, "wet weight (lb), not under the dry weight");
  const moisture = Math.max(0, ((wetLb - dryLb) / dryLb) * 100);
  mustBeBetween(0, MOST_MOISTURE_PCT, moisture, "moisture (% of the dry weight) from these weights");
  return moisture;
}

/**
 * The oven-dry weight in a piece of known moisture.
 *
 * @formula dry = wetLb * 100 / (100 + moisturePercent)
 * @source Sample boards, step 3B
 * @range moisture from 0 to 280 %
 */
export function ovendryWeightLb({ wetLb, moisturePercent }: { wetLb: number; moisturePercent: number }): number {
  mustBeBetween(0, MOST_MOISTURE_PCT, moisturePercent, "moisture (%)");
  return (wetLb * 100) / (100 + moisturePercent);
}

/**
 * The weight of a piece when it gets to another moisture, such as a sample board at its target.
 *
 * @formula W = dry * (100 + targetPercent) / 100; dry = ovendryWeightLb(wetLb: weightLb) [lb]
 * @source Sample boards, step 3B
 * @range moistures from 0 to 280 %
 */
export function weightAtMoistureLb(piece: {
  weightLb: number;
  moisturePercent: number;
  targetPercent: number;
}): number {
  mustBeBetween(0, MOST_MOISTURE_PCT, piece.targetPercent, "target (% moisture)");
  return (
    (ovendryWeightLb({ wetLb: piece.weightLb, moisturePercent: piece.moisturePercent }) * (100 + piece.targetPercent)) /
    100
  );
}
