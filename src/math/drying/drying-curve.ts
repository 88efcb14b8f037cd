import { apart, mustBeBetween, NoAnswer, short } from "../errors";
import { fittedLine, sumOf } from "../numbers";
import { MOST_MOISTURE_PCT } from "./moisture";

/** One moisture reading of the stack. Days may be counted from any start; dates of the sheet do. */
export interface Reading {
  day: number;
  moisturePercent: number;
}

/** The line through the logarithms of the readings' excess over equilibrium. */
export interface DryingCurve {
  ratePerDay: number;
  firstDay: number;
  lastDay: number;
  /** of the curve on the first day, percent */
  startingMoisturePercent: number;
  /** Undefined with two readings, through which a curve always passes. */
  spread: { pointsOfMoisture: number; logarithm: number } | undefined;
  /** centre and width of the readings, for the spread of a forecast */
  meanDay: number;
  meanLogarithm: number;
  sumOfSquaredDays: number;
  count: number;
}

/** Two points make a line; from three on its scatter shows. */
const FEWEST_READINGS = 2;

/** No stack dries longer (20 years; common practice, no source): a longer time is a slip, such as a blank among dates. */
export const LONGEST_DAYS = 7305;

/**
 * Fits the drying law to readings: the excess over equilibrium falls by the same share every day.
 *
 * @formula ratePerDay = -sum((t - meanDay) * (y - meanLogarithm)) / sumOfSquaredDays [a day];
 *   startingMoisturePercent = emcPercent + exp(meanLogarithm - ratePerDay * (item(t, 1) - meanDay)) [%];
 *   pointsOfMoisture = none if count(t) = 2, else sqrt(sum((readings.moisturePercent - emcPercent - exp(fitted))^2) /
 *   (count(t) - 2)) [points]; fitted = meanLogarithm - ratePerDay * (t - meanDay);
 *   y = ln(readings.moisturePercent - emcPercent); t = readings.day [day]; meanDay = mean(t) [day];
 *   meanLogarithm = mean(y); sumOfSquaredDays = squares(t)
 * @source Wood drying article, exponential approach to equilibrium
 * @range two readings or more, days rising, within 20 years, all above the equilibrium moisture and falling over all
 */
export function dryingCurve({
  readings,
  emcPercent,
}: {
  readings: readonly Reading[];
  emcPercent: number;
}): DryingCurve {
  mustBeReadable(readings, emcPercent);
  const count = readings.length;
  const logarithms = readings.map(({ moisturePercent }) => Math.log(moisturePercent - emcPercent));
  const line = fittedLine(
    readings.map(({ day }) => day),
    logarithms,
  );
  const { meanX: meanDay, meanY: meanLogarithm, squaresOfX: sumOfSquaredDays } = line;
  const ratePerDay = -line.slope;
  if (!(ratePerDay > 0 && Number.isFinite(ratePerDay)))
    throw new NoAnswer(
      `readings: they do not fall toward ${short(emcPercent)} %, so no drying curve passes through them`,
    );
  const logarithmOn = (day: number) => meanLogarithm - ratePerDay * (day - meanDay);
  const moistureOn = (day: number) => emcPercent + Math.exp(logarithmOn(day));
  const error = (misses: number[]) => Math.sqrt(sumOf(misses, (miss) => miss ** 2) / (count - FEWEST_READINGS));
  const firstDay = readings[0]!.day;
  return {
    ratePerDay,
    firstDay,
    lastDay: readings[count - 1]!.day,
    startingMoisturePercent: moistureOn(firstDay),
    spread:
      count === FEWEST_READINGS
        ? undefined
        : {
            pointsOfMoisture: error(readings.map(({ day, moisturePercent }) => moisturePercent - moistureOn(day))),
            logarithm: error(readings.map(({ day }, i) => logarithms[i]! - logarithmOn(day))),
          },
    meanDay,
    meanLogarithm,
    sumOfSquaredDays,
    count,
  };
}

function mustBeReadable(readings: readonly Reading[], emcPercent: number): void {
  if (readings.length < FEWEST_READINGS)
    throw new NoAnswer(`readings: wanted ${FEWEST_READINGS} or more, got ${readings.length}`);
  readings.forEach(({ day, moisturePercent }, i) => {
    if (!(moisturePercent > emcPercent))
      throw new NoAnswer(
        `readings: wanted all above the equilibrium moisture ${short(emcPercent)} %, got ${apart(moisturePercent, emcPercent)} on day ${day}`,
      );
    mustBeBetween(emcPercent, MOST_MOISTURE_PCT, moisturePercent, `reading on day ${day} (% moisture)`);
    const before = readings[i - 1];
    if (before && !(day > before.day))
      throw new NoAnswer(`days: wanted each later than the one before, got ${day} after ${before.day}`);
    if (before && day - before.day > LONGEST_DAYS)
      throw new NoAnswer(
        `days: wanted within 20 years of each other, got ${day} after ${before.day} (a blank is day 0)`,
      );
  });
}
