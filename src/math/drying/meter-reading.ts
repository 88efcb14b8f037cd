import { mustBeBetween } from "../errors";

/** At this temperature of the wood the reading stands as it is. */
const SET_AT_F = 70;

/** So many degrees make a point of moisture. */
const DEGREES_F_PER_POINT = 20;

/**
 * Percent of moisture that a pin meter would read if the wood were at 70 degF: it reads low in cold wood, high in warm.
 *
 * @formula MC = readingPercent + (70 - temperatureF) / 20
 * @source Wengert meter temperature: about 1 point for every 20 degF; two makers' printed examples lie within 1.5 points
 * @range readings of 6 to 25 %, beyond which no pin meter is sure; wood that is not frozen, up to 150 degF
 * @checked 1 of 1 printed example of the rule
 */
export function meterMoisturePercent({ readingPercent, temperatureF }: Reading): number {
  mustBeBetween(6, 25, readingPercent, "reading (%)");
  mustBeBetween(LEAST_F, 150, temperatureF, "temperature of the wood (degF)");
  return readingPercent + (SET_AT_F - temperatureF) / DEGREES_F_PER_POINT;
}

/** The rule's printed example stands at 30 degF: water in the cell walls is not frozen there. */
const LEAST_F = 30;

interface Reading {
  readingPercent: number;
  temperatureF: number;
}
