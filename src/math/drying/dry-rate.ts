import { dryingCurve, type Reading } from "./drying-curve";

/** How a stack dries. */
export interface DryRate {
  /** Share of the excess moisture lost in a day. */
  ratePerDay: number;
  /** On the first day. */
  startingMoisturePercent: number;
  /** Points of moisture; undefined with two readings, through which a curve always passes. */
  standardErrorPercent: number | undefined;
  /** Days to lose half of the excess. */
  halfTimeDays: number;
  count: number;
}

/**
 * What the readings say about how a stack dries.
 *
 * @formula halfTimeDays = ln(2) / ratePerDay [days]; ratePerDay = dryingCurve() [a day]
 * @source Wood drying article, exponential approach to equilibrium
 * @range two readings or more, days rising, all above the equilibrium moisture and falling over all
 */
export function dryRate({ readings, emcPercent }: { readings: readonly Reading[]; emcPercent: number }): DryRate {
  const { ratePerDay, startingMoisturePercent, spread, count } = dryingCurve({ readings, emcPercent });
  const standardErrorPercent = spread?.pointsOfMoisture;
  return { ratePerDay, startingMoisturePercent, standardErrorPercent, halfTimeDays: Math.LN2 / ratePerDay, count };
}
