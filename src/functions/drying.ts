import {
  anyNumber,
  count,
  fahrenheit,
  feet,
  inches,
  moisture as percentMoisture,
  number,
  oneOf,
  optional,
  percent,
  pounds,
  rows,
} from "../cells/read";
import { spread, table } from "../cells/spread";
import { airDryDays, DRYING_BOUNDS, USUAL_YARD } from "../math/drying/air-dry-days";
import { dryForecast } from "../math/drying/dry-forecast";
import { dryRate } from "../math/drying/dry-rate";
import { emcPercent, humidityPercentForEmc } from "../math/drying/emc";
import { heatHours } from "../math/drying/heat-hours";
import { kilnDays } from "../math/drying/kiln-days";
import { kilnSteps } from "../math/drying/kiln-steps";
import { moisturePercent, ovendryWeightLb, weightAtMoistureLb } from "../math/drying/moisture";
import { stackHeightIn, stickerCount } from "../math/drying/stickers";
import { SPECIES_NAMES } from "../math/wood/species";
import { waterToLoseLb } from "../math/wood/weight";

/**
 * Moisture content from a wet and an oven-dry weight.
 *
 * Percent of the oven-dry weight, so green wood passes 100. Grams and ounces do as well as pounds, the same for both.
 *
 * @customfunction MOISTURE
 * @param wet Weight as it is. A bare number is pounds; 1.8 kg works too.
 * @param dry Weight oven dry, in the same unit.
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

/**
 * Equilibrium moisture content: what wood settles at in air of a temperature and humidity.
 *
 * @customfunction EMC
 * @param temperature A bare number is degrees Fahrenheit; 20 C works too.
 * @param humidity Relative humidity in percent: 65, 65% and 0.65 are the same.
 * @returns Percent of the oven-dry weight
 * @example =BOLE.EMC(140, 55) gives 8.4
 * @example =BOLE.EMC(70, 65%) gives 12.0
 * @example =BOLE.EMC(70, 100) gives #N/A
 * @words equilibrium, how dry will it get, shop humidity
 * @see EMCHUMIDITY
 * @picture emc
 */
export function EMC(temperature: unknown[][], humidity: unknown[][]): unknown[][] {
  return spread(
    { temperatureF: fahrenheit(temperature, "temperature"), humidityPercent: percent(humidity, "humidity") },
    emcPercent,
  );
}

/**
 * The humidity that holds wood at a moisture: the inverse of EMC.
 *
 * @customfunction EMCHUMIDITY
 * @param temperature A bare number is degrees Fahrenheit; 20 C works too.
 * @param moisture Moisture to hold, percent of the oven-dry weight. Up to 3 type it with the sign: 2.5%.
 * @returns Percent relative humidity
 * @example =BOLE.EMCHUMIDITY(70, 8) gives 42.0
 * @example =BOLE.EMCHUMIDITY(70, 40) gives #N/A
 * @words kiln setting, dehumidifier setting, humidity for moisture
 * @see EMC
 * @picture emc
 */
export function EMCHUMIDITY(temperature: unknown[][], moisture: unknown[][]): unknown[][] {
  return spread(
    { temperatureF: fahrenheit(temperature, "temperature"), moisturePercent: percentMoisture(moisture, "moisture") },
    humidityPercentForEmc,
  );
}

/**
 * Days to air dry lumber: a rough guess, from remembered days by species.
 *
 * How rough: the days for 1-inch lumber from green to 20 % are from memory, and between lumber piled in spring and lumber
 * piled in fall they differ by a factor of two to ten. What was seen in print is the meaning of that range, the
 * effect of thickness and temperature (for red oak in a kiln, stretched here to other woods and to yard temperatures)
 * and the equilibrium moisture. Typical is the geometric mean of fast and slow. To know your own stack, weigh it or read
 * it with a meter and use DRYRATE and DRYFORECAST.
 *
 * @customfunction AIRDRYDAYS
 * @param species Name of the species.
 * @param thickness Board thickness. A bare number is inches; 4/4, 8/4 and 50 mm work too.
 * @param [from] Moisture it starts at, percent of the oven-dry weight; the species' green moisture when left out.
 * @param [to] Moisture to reach, percent; 20 when left out.
 * @param [temperature] Mean of the drying season. A bare number is degrees Fahrenheit; 70 when left out.
 * @param [humidity] Mean relative humidity in percent; 65 when left out.
 * @param [bound] typical (when left out), fast (piled in good drying weather) or slow (piled too late in the year).
 * @returns Days
 * @example =BOLE.AIRDRYDAYS("red oak", "4/4") gives 118
 * @example =BOLE.AIRDRYDAYS("red oak", "8/4", 80, 20, 60, 70, "fast") gives 233
 * @example =BOLE.AIRDRYDAYS("red oak", 1, 80, 10) gives #N/A
 * @example =BOLE.AIRDRYDAYS("sassafras", 1) gives #N/A
 * @words how long to dry, air drying, when is it ready, year per inch
 * @see DRYFORECAST
 */
export function AIRDRYDAYS(
  species: unknown[][],
  thickness: unknown[][],
  from?: unknown[][],
  to?: unknown[][],
  temperature?: unknown[][],
  humidity?: unknown[][],
  bound?: unknown[][],
): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      thicknessIn: inches(thickness, "thickness"),
      fromPercent: optional(percentMoisture(from, "from")),
      toPercent: optional(percentMoisture(to, "to"), 20),
      temperatureF: optional(fahrenheit(temperature, "temperature"), USUAL_YARD.temperatureF),
      humidityPercent: optional(percent(humidity, "humidity"), USUAL_YARD.humidityPercent),
      bound: optional(oneOf(DRYING_BOUNDS, bound, "bound"), "typical"),
    },
    airDryDays,
  );
}

/**
 * Days to dry red oak in a kiln at steady temperature and humidity.
 *
 * The one wood a published time constant was seen for. It says nothing of checking: dry no faster than the wood allows.
 *
 * @customfunction KILNDAYS
 * @param species Name of the species: red oak.
 * @param thickness Board thickness. A bare number is inches; 4/4 and 50 mm work too.
 * @param from Moisture it starts at, percent of the oven-dry weight.
 * @param to Moisture to reach, percent.
 * @param temperature Dry bulb. A bare number is degrees Fahrenheit.
 * @param humidity Relative humidity in percent.
 * @returns Days
 * @example =BOLE.KILNDAYS("red oak", 1, 85, 25, 150, 50) gives 4.5
 * @example =BOLE.KILNDAYS("black walnut", 1, 85, 25, 150, 50) gives #N/A
 * @caution Fast drying checks, honeycombs and casehardens thick oak. Follow a proven schedule and your kiln maker's limits.
 * @words kiln time, how long in the kiln
 */
export function KILNDAYS(
  species: unknown[][],
  thickness: unknown[][],
  from: unknown[][],
  to: unknown[][],
  temperature: unknown[][],
  humidity: unknown[][],
): unknown[][] {
  return spread(
    {
      species: oneOf(SPECIES_NAMES, species, "species"),
      thicknessIn: inches(thickness, "thickness"),
      fromPercent: percentMoisture(from, "from"),
      toPercent: percentMoisture(to, "to"),
      temperatureF: fahrenheit(temperature, "temperature"),
      humidityPercent: percent(humidity, "humidity"),
    },
    kilnDays,
  );
}

/**
 * How your own stack dries: the drying curve through your readings.
 *
 * Works from two readings on; with two, a curve always fits and the error is not known. The days may be dates.
 *
 * A pin meter does not read true above about 25 to 30 % (common practice, no source), and a wrong first reading bends the
 * whole curve: for wetter wood weigh a sample board (MOISTURE, OVENDRYWEIGHT).
 *
 * @customfunction DRYRATE
 * @param days Days of the readings, in order, as a range: day numbers or dates.
 * @param readings Moisture read on those days, percent of the oven-dry weight.
 * @param emc Moisture the air holds wood at, percent: see EMC.
 * @returns Table: rate a day, starting moisture, standard error in points, half-time in days, readings used
 * @example =BOLE.DRYRATE({0;30;60}, {60;36;24}, 12) gives {"figure","value","unit";"drying rate",0.0231,"of the excess moisture a day";"starting moisture",60,"% on the first day";"standard error of the fit",0,"points of moisture";"half-time",30,"days to lose half of the excess";"readings used",3,""}
 * @example =BOLE.DRYRATE({0;30}, {30;36}, 12) gives #N/A
 * @words drying curve, moisture meter readings, how fast is it drying
 * @see DRYFORECAST
 * @picture drying-curve
 */
export function DRYRATE(days: unknown[][], readings: unknown[][], emc: unknown[][]): unknown[][] {
  return table(
    {
      readings: rows({ day: anyNumber(days, "days"), moisturePercent: percentMoisture(readings, "readings") }),
      emcPercent: percentMoisture(emc, "emc"),
    },
    dryRate,
  );
}

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
 * @param days Days of the readings, in order, as a range: day numbers or dates.
 * @param readings Moisture read on those days, percent of the oven-dry weight.
 * @param emc Moisture the air holds wood at, percent: see EMC.
 * @param target Moisture to reach, percent.
 * @returns Table: day the target is reached, early day, late day, days after the last reading
 * @example =BOLE.DRYFORECAST({0;30}, {60;36}, 12, 15) gives {"figure","value","unit";"target reached",120,"day, counted as the readings are";"early","not known from two readings","day";"late","not known from two readings","day";"days after the last reading",90,"days; below 0 it is dry already"}
 * @example =BOLE.DRYFORECAST({0;30;60}, {60;37;24}, 12, 15) gives a table of 5 rows
 * @example =BOLE.DRYFORECAST({0;30;60}, {60;37;24}, 12, 10) gives #N/A
 * @words when is it ready, when is the stack dry
 * @see DRYRATE
 * @picture drying-curve
 */
export function DRYFORECAST(
  days: unknown[][],
  readings: unknown[][],
  emc: unknown[][],
  target: unknown[][],
): unknown[][] {
  return table(
    {
      readings: rows({ day: anyNumber(days, "days"), moisturePercent: percentMoisture(readings, "readings") }),
      emcPercent: percentMoisture(emc, "emc"),
      targetPercent: percentMoisture(target, "target"),
    },
    dryForecast,
  );
}

/**
 * Stickers for a stack: a row under every layer, with one at each end.
 *
 * The bottom layer has its row too, on the bolsters.
 *
 * @customfunction STICKERS
 * @param length Length of the boards. A bare number is feet; 8'6" and 2.4 m work too.
 * @param spacing Widest gap between stickers. A bare number is inches.
 * @param layers Layers of boards.
 * @returns Number of stickers
 * @example =BOLE.STICKERS(8, 16, 10) gives 70
 * @example =BOLE.STICKERS(8, 16, 2.5) gives #VALUE!
 * @words stacking, sticks, stacking sticks
 * @see STACKHEIGHT
 * @picture stack
 */
export function STICKERS(length: unknown[][], spacing: unknown[][], layers: unknown[][]): unknown[][] {
  return spread(
    {
      lengthFt: feet(length, "length"),
      spacingIn: inches(spacing, "spacing"),
      layers: count(layers, "layers"),
    },
    stickerCount,
  );
}

/**
 * Height of a stickered stack, with a sticker under every layer.
 *
 * @customfunction STACKHEIGHT
 * @param layers Layers of boards.
 * @param thickness Board thickness. A bare number is inches; 5/4 works too.
 * @param sticker Sticker thickness. A bare number is inches.
 * @param [base] Height of what it stands on. A bare number is inches; none when left out.
 * @returns Inches
 * @example =BOLE.STACKHEIGHT(20, "5/4", 0.75, 12) gives 52
 * @example =BOLE.STACKHEIGHT(20, "5/4", "thick") gives #VALUE!
 * @caution A tall, narrow stack can fall on someone: keep it level, on firm bolsters, and tie or brace it.
 * @words stack, pile height
 * @see STICKERS
 * @picture stack
 */
export function STACKHEIGHT(
  layers: unknown[][],
  thickness: unknown[][],
  sticker: unknown[][],
  base?: unknown[][],
): unknown[][] {
  return spread(
    {
      layers: count(layers, "layers"),
      thicknessIn: inches(thickness, "thickness"),
      stickerIn: inches(sticker, "sticker"),
      baseIn: optional(inches(base, "base"), 0),
    },
    stackHeightIn,
  );
}

/**
 * A published kiln schedule, step by step, for the species that one was seen for: Oregon white oak.
 *
 * The source's abstract goes from the stage that ends at 30 % straight to equalizing. Other species have no schedule
 * here, because none was seen in print: ask your kiln's maker or a drying handbook.
 *
 * @customfunction KILNSTEPS
 * @param species Name of the species: Oregon white oak.
 * @param thickness Board thickness. A bare number is inches; 4/4 works too.
 * @returns Table: stage, moisture at which it ends, dry bulb and wet bulb in degrees Fahrenheit
 * @example =BOLE.KILNSTEPS("Oregon white oak", "4/4") gives {"stage","until moisture, %","dry bulb, °F","wet bulb, °F";"dry",40,110,106;"dry",30,110,104;"equalize","",180,145;"condition","",180,170}
 * @example =BOLE.KILNSTEPS("black walnut", "4/4") gives #N/A
 * @caution A hot chamber burns and wet heat scalds: keep to your kiln maker's limits and never go in while it runs.
 * @words kiln schedule, wet bulb, dry bulb
 */
export function KILNSTEPS(species: unknown[][], thickness: unknown[][]): unknown[][] {
  return table(
    { species: oneOf(SPECIES_NAMES, species, "species"), thicknessIn: inches(thickness, "thickness") },
    kilnSteps,
  );
}

/**
 * Hours to heat the centre of a square pine timber to 133 °F, the temperature that kills insects.
 *
 * The upper end of the printed 99 % interval, so that nearly every piece is through by then. For pine, stickered, in a
 * chamber at 160 °F; between printed values the logarithms are interpolated. The time the centre must stay hot
 * (30 minutes by the rule for wood packaging) comes on top.
 *
 * @customfunction HEATHOURS
 * @param size Side of the square timber. A bare number is inches; 4 to 12.
 * @param start Temperature of the wood at the start. A bare number is degrees Fahrenheit; 40 to 60.
 * @param chamber Dry bulb of the chamber: 160 or 71 C, the one the table was printed for.
 * @param wetbulb Wet bulb of the chamber, degrees Fahrenheit; 148 to 158.
 * @returns Hours
 * @example =BOLE.HEATHOURS(8, 50, 160, 152) gives 13.37
 * @example =BOLE.HEATHOURS(8, 50, 150, 142) gives #N/A
 * @caution A plan, not a certificate: measure the temperature at the centre of the thickest piece. Treated wood can be attacked again, and wet wood molds again. A hot chamber burns: never go in while it runs.
 * @words heat treatment, sterilize, kill bugs, powderpost beetle, insects
 */
export function HEATHOURS(
  size: unknown[][],
  start: unknown[][],
  chamber: unknown[][],
  wetbulb: unknown[][],
): unknown[][] {
  return spread(
    {
      sizeIn: inches(size, "size"),
      startF: fahrenheit(start, "start"),
      chamberF: fahrenheit(chamber, "chamber"),
      wetBulbF: fahrenheit(wetbulb, "wetbulb"),
    },
    heatHours,
  );
}
