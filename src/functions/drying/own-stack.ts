import { anyNumber, moisture, named, rows } from "../../cells/read";
import { table } from "../../cells/spread";
import { dryForecastTable, dryRateTable } from "./own-stack-tables";

/**
 * How your own stack dries: the drying curve through your readings.
 *
 * Works from two readings on; with two, a curve always fits and the error is not known. The days may be dates.
 *
 * A pin meter does not read true above about 25 to 30 % (common practice, no source), and a wrong first reading bends the
 * whole curve: for wetter wood weigh a sample board (MOISTURE, OVENDRYWEIGHT).
 *
 * @customfunction DRYRATE
 * @returns Table: rate a day, starting moisture, standard error in points, half-time in days, readings used
 * @example =BOLE.DRYRATE({0;30;60}, {60;36;24}, 12) gives {"figure","value","unit";"drying rate",0.0231,"of the excess moisture a day";"starting moisture",60,"% on the first day";"standard error of the fit",0,"points of moisture";"half-time",30,"days to lose half of the excess";"readings used",3,""}
 * @example =BOLE.DRYRATE({0;30}, {30;36}, 12) gives #N/A
 * @words drying curve, moisture meter readings, how fast is it drying
 * @see DRYFORECAST
 * @picture drying-curve
 */
export const DRYRATE = table(
  {
    readings: rows({
      /** Days of the readings, in order, as a range: day numbers or dates. */
      day: named("days", anyNumber),
      /** Moisture read on those days, percent of the oven-dry weight. */
      moisturePercent: named("readings", moisture),
    }),
    /** Moisture the air holds wood at, percent: see EMC. */
    emcPercent: moisture,
  },
  dryRateTable,
);

/**
 * The day your stack reaches its target, from your own readings, with an early and a late day.
 *
 * Early and late are where the band of two standard errors round the fitted curve meets the target: about 19 in 20 with
 * many readings, fewer with three or four. Two readings give the day but no spread. If the days are dates so is the
 * answer: format it as a date. The weather to come is taken to be that of the readings.
 *
 * A pin meter does not read true above about 25 to 30 % (common practice, no source): for wetter wood weigh a sample
 * board (MOISTURE, OVENDRYWEIGHT).
 *
 * @customfunction DRYFORECAST
 * @returns Table: day the target is reached, early day, late day, days after the last reading
 * @example =BOLE.DRYFORECAST({0;30}, {60;36}, 12, 15) gives {"figure","value","unit";"target reached",120,"day, counted as the readings are";"early","not known from two readings","day";"late","not known from two readings","day";"days after the last reading",90,"days; below 0 it is dry already"}
 * @example =BOLE.DRYFORECAST({0;30;60}, {60;37;24}, 12, 15) gives a table of 5 rows
 * @example =BOLE.DRYFORECAST({0;30;60}, {60;37;24}, 12, 10) gives #N/A
 * @words when is it ready, when is the stack dry
 * @see DRYRATE
 * @picture drying-curve
 */
export const DRYFORECAST = table(
  {
    readings: rows({
      /** Days of the readings, in order, as a range: day numbers or dates. */
      day: named("days", anyNumber),
      /** Moisture read on those days, percent of the oven-dry weight. */
      moisturePercent: named("readings", moisture),
    }),
    /** Moisture the air holds wood at, percent: see EMC. */
    emcPercent: moisture,
    /** Moisture to reach, percent. */
    targetPercent: moisture,
  },
  dryForecastTable,
);
