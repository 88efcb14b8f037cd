import { mustBeAbove, mustBeAtLeast, mustBeBelow, mustBeBetween } from "../errors";
import { turnBetween } from "../numbers";
import { EMC_COEFFICIENTS } from "./emc-coefficients.table";

/** Between these the handbook's Fahrenheit and Celsius coefficients give the same within 0.013 percent of moisture. */
const COLDEST_F = 30;
const HOTTEST_F = 210;

/**
 * The moisture at which wood neither dries nor takes up water in air of this temperature and humidity, percent.
 *
 * @formula EMC = 1800 / W * (Kh / (1 - Kh) + (K1 * Kh + 2 * K1 * K2 * Kh^2) / (1 + K1 * Kh + K1 * K2 * Kh^2));
 *   Kh = K * humidityPercent / 100; W = 330 + 0.452 * T + 0.00415 * T^2;
 *   K = 0.791 + 0.000463 * T - 0.000000844 * T^2; K1 = 6.34 + 0.000775 * T - 0.0000935 * T^2;
 *   K2 = 1.09 + 0.0284 * T - 0.0000904 * T^2; T = temperatureF
 * @source FPL-GTR-282, Eq 4-5
 * @source FPL-190 for the coefficients in degrees Fahrenheit
 * @range 30 to 210 degF; humidity from 0, where it gives 0, to under 100 %. The handbook prints its table for 5 to 95 %: nearer to 100 the
 *   answer is less sure
 */
export function emcPercent({
  temperatureF,
  humidityPercent,
}: {
  temperatureF: number;
  humidityPercent: number;
}): number {
  mustBeBetween(COLDEST_F, HOTTEST_F, temperatureF, "temperature (°F)");
  mustBeAtLeast(0, humidityPercent, "humidity (%)");
  mustBeBelow(100, humidityPercent, "humidity (%)");
  return emcAtShare(temperatureF, humidityPercent / 100);
}

/**
 * The humidity that holds wood at a moisture, percent: the equilibrium equation solved for the humidity.
 *
 * @formula by search: the humidity at which emcPercent is the moisture asked for, found by halving, for it rises
 *   steadily with humidity
 * @source FPL-GTR-282, Eq 4-5
 * @source FPL-190 for the coefficients in degrees Fahrenheit
 * @range 30 to 210 degF; moisture above 0 and under the equilibrium at 100 % humidity
 */
export function humidityPercentForEmc({
  temperatureF,
  moisturePercent,
}: {
  temperatureF: number;
  moisturePercent: number;
}): number {
  mustBeBetween(COLDEST_F, HOTTEST_F, temperatureF, "temperature (°F)");
  mustBeAbove(0, moisturePercent, "moisture (%)");
  const highest = emcAtShare(temperatureF, 1);
  mustBeBelow(
    Number(highest.toFixed(1)),
    moisturePercent,
    `moisture (%, the most that air at ${temperatureF} °F can hold wood at)`,
  );
  const [dry, damp] = turnBetween(0, 1, (share) => emcAtShare(temperatureF, share) < moisturePercent);
  return 50 * (dry + damp);
}

function emcAtShare(temperatureF: number, humidity: number): number {
  const at = ([a, b, c]: readonly [number, number, number]) => a + b * temperatureF + c * temperatureF ** 2;
  const W = at(EMC_COEFFICIENTS.W);
  const K1 = at(EMC_COEFFICIENTS.K1);
  const K2 = at(EMC_COEFFICIENTS.K2);
  const Kh = at(EMC_COEFFICIENTS.K) * humidity;
  const bound = (K1 * Kh + 2 * K1 * K2 * Kh ** 2) / (1 + K1 * Kh + K1 * K2 * Kh ** 2);
  return (1800 / W) * (Kh / (1 - Kh) + bound);
}
