import { dryingCurve, type Reading } from "./drying-curve";

type Cell = string | number;

/** Said in place of a spread that two readings cannot show. */
export const TWO_READINGS = "not known from two readings";

/**
 * What the readings say about how a stack dries, as a table.
 *
 * @formula k and M0 of M = EMC + (M0 - EMC) exp(-k t) by least squares on ln(M - EMC); half-time = ln 2 / k
 * @source Wood drying article, exponential approach to equilibrium
 * @range two readings or more, days rising, all above the equilibrium moisture and falling over all
 */
export function dryRate({ readings, emcPercent }: { readings: readonly Reading[]; emcPercent: number }): Cell[][] {
  const { ratePerDay, startingMoisturePercent, spread, count } = dryingCurve({ readings, emcPercent });
  return [
    ["figure", "value", "unit"],
    ["drying rate", ratePerDay, "of the excess moisture a day"],
    ["starting moisture", startingMoisturePercent, "% on the first day"],
    ["standard error of the fit", spread?.pointsOfMoisture ?? TWO_READINGS, "points of moisture"],
    ["half-time", Math.LN2 / ratePerDay, "days to lose half of the excess"],
    ["readings used", count, ""],
  ];
}
