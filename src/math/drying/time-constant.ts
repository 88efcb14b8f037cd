import { mustBeBetween } from "../errors";
import { celsiusFromFahrenheit } from "../units";

/** Boards and slabs; thinner or thicker is a slip (common practice, no source). */
const THINNEST_IN = 0.125;
const THICKEST_IN = 12;

/** Thickness exponent and the two rate figures of red oak boards. */
const THICKNESS_EXPONENT = 1.52;
const RATE_COLD = 0.0575;
const RATE_PER_MMHG = 0.00142;

/** Water from 1 to 100 degC, millimetres of mercury and degrees Celsius. */
const ANTOINE = { a: 8.07131, b: 1730.63, c: 233.426 };

/**
 * Days in which the moisture above equilibrium falls to 37 % of what it was, for red oak boards in steady air.
 *
 * @formula tau = L^1.52 / (0.0575 + 0.00142 * p); p = saturatedVaporMmHg() [mmHg]; L = thicknessIn
 * @source Wood drying article, time constant of red oak boards
 * @source Antoine constants for water, 1 to 100 degC
 * @range red oak at kiln temperatures; at yard temperatures it is stretched beyond its data; boards 1/8 to 12 in thick
 */
export function redOakTimeConstantDays({ thicknessIn, temperatureF }: { thicknessIn: number; temperatureF: number }) {
  mustBeBetween(THINNEST_IN, THICKEST_IN, thicknessIn, "board thickness (in)");
  return thicknessIn ** THICKNESS_EXPONENT / (RATE_COLD + RATE_PER_MMHG * saturatedVaporMmHg(temperatureF));
}

/**
 * Pressure of saturated water vapor.
 *
 * @formula p = 10^(8.07131 - 1730.63 / (233.426 + C)); C = (temperatureF - 32) * 5 / 9 [°C]
 * @source Antoine constants for water, 1 to 100 degC
 */
export function saturatedVaporMmHg(temperatureF: number): number {
  return 10 ** (ANTOINE.a - ANTOINE.b / (ANTOINE.c + celsiusFromFahrenheit(temperatureF)));
}

/**
 * How many time constants it takes to dry from one moisture to another, the excess over equilibrium falling at a steady
 * rate.
 *
 * @formula n = ln((fromPercent - emcPercent) / (toPercent - emcPercent))
 * @source Wood drying article, exponential approach to equilibrium
 */
export function timeConstantsBetween(moisture: { fromPercent: number; toPercent: number; emcPercent: number }): number {
  return Math.log((moisture.fromPercent - moisture.emcPercent) / (moisture.toPercent - moisture.emcPercent));
}
