import { apart, mustBeBelow, mustBeBetween, NoAnswer, short } from "../errors";
import { dryingCurve, LONGEST_DAYS, type DryingCurve, type Reading } from "./drying-curve";

/** How many standard errors of the fitted line the early and the late day lie off: 19 in 20, given many readings. */
const STANDARD_ERRORS = 2;

/** When a stack reaches its target. Days are counted as the readings are. */
export interface DryForecast {
  day: number;
  /** The early and the late day, or why neither is known. */
  spread: { early: number; late: number } | "two readings" | "scattered";
  daysAfterLast: number;
}

interface Forecast {
  readings: readonly Reading[];
  emcPercent: number;
  targetPercent: number;
}

/**
 * The day the readings' drying curve reaches a target, with an early and a late day.
 *
 * Early and late are where the band of two standard errors round the fitted line meets the target.
 *
 * @formula day = meanDay + toFall / k [day]; toFall = meanLogarithm - ln(targetPercent - emcPercent);
 *   k = dryingCurve() [a day]; early = none if n < 3, none if a <= 0, else meanDay + (toFall * k - root) / a [day];
 *   late = none if n < 3, none if a <= 0, else meanDay + (toFall * k + root) / a [day]; a = k^2 - band / squares(t);
 *   root = sqrt(band * (toFall^2 / squares(t) + a / n));
 *   band = 4 * sum((y - meanLogarithm + k * (t - meanDay))^2) / (n - 2); n = count(t) [readings];
 *   y = ln(readings.moisturePercent - emcPercent); t = readings.day [day]; meanDay = mean(t) [day];
 *   meanLogarithm = mean(y)
 * @source Wood drying article, exponential approach to equilibrium
 * @source plain arithmetic, least squares and the band of its line
 * @range target above the equilibrium moisture and below the curve's start; two readings or more; the day within 20 years of the last reading
 */
export function dryForecast({ readings, emcPercent, targetPercent }: Forecast): DryForecast {
  if (!(targetPercent > emcPercent))
    throw new NoAnswer(
      `target (% moisture): the air dries wood to ${short(emcPercent)} and no further, got ${apart(targetPercent, emcPercent)}`,
    );
  const curve = dryingCurve({ readings, emcPercent });
  mustBeBelow(
    curve.startingMoisturePercent,
    targetPercent,
    "target (% moisture; the limit is where the readings start)",
  );
  const toFall = curve.meanLogarithm - Math.log(targetPercent - emcPercent);
  const day = curve.meanDay + toFall / curve.ratePerDay;
  mustBeBetween(-LONGEST_DAYS, LONGEST_DAYS, day - curve.lastDay, "days to the target after the last reading");
  return { day, spread: earlyAndLate(curve, toFall), daysAfterLast: day - curve.lastDay };
}

function earlyAndLate(curve: DryingCurve, toFall: number): DryForecast["spread"] {
  if (!curve.spread) return "two readings";
  const { ratePerDay: k, sumOfSquaredDays, count, meanDay } = curve;
  const band = (STANDARD_ERRORS * curve.spread.logarithm) ** 2;
  const a = k ** 2 - band / sumOfSquaredDays;
  if (a <= 0) return "scattered";
  const root = Math.sqrt(band * (toFall ** 2 / sumOfSquaredDays + a / count));
  return { early: meanDay + (toFall * k - root) / a, late: meanDay + (toFall * k + root) / a };
}
