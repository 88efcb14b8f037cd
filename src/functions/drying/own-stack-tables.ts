import type { TableCell } from "../../cells/spread";
import { dryForecast } from "../../math/drying/dry-forecast";
import { dryRate } from "../../math/drying/dry-rate";

const HEADINGS = ["figure", "value", "unit"];

/** Said in place of a spread that the readings do not show. */
const TWO_READINGS = "not known from two readings";
const TOO_SCATTERED = "not known: the readings scatter too much";

/** How a stack dries, as a table. */
export function dryRateTable(asked: Parameters<typeof dryRate>[0]): TableCell[][] {
  const { ratePerDay, startingMoisturePercent, standardErrorPercent, halfTimeDays, count } = dryRate(asked);
  return [
    HEADINGS,
    ["drying rate", ratePerDay, "of the excess moisture a day"],
    ["starting moisture", startingMoisturePercent, "% on the first day"],
    ["standard error of the fit", standardErrorPercent ?? TWO_READINGS, "points of moisture"],
    ["half-time", halfTimeDays, "days to lose half of the excess"],
    ["readings used", count, ""],
  ];
}

/** When a stack reaches its target, as a table. */
export function dryForecastTable(asked: Parameters<typeof dryForecast>[0]): TableCell[][] {
  const { day, spread, daysAfterLast } = dryForecast(asked);
  const why = spread === "two readings" ? TWO_READINGS : TOO_SCATTERED;
  const { early, late } = typeof spread === "string" ? { early: why, late: why } : spread;
  return [
    HEADINGS,
    ["target reached", day, "day, counted as the readings are"],
    ["early", early, "day"],
    ["late", late, "day"],
    ["days after the last reading", daysAfterLast, "days; below 0 it is dry already"],
  ];
}
