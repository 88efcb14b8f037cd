import { mustBeAtLeast } from "../errors";
import { mustBeScalable } from "./log";
import { centimeters, meters } from "./metric";
import { downTo, toDecimals } from "../rounding";

/** From here diameters go by even centimeters (MAFF notice 1841: small logs are those under 14 cm). */
const EVEN_FROM_CM = 14;
/** From here the taper is added. */
const LONG_FROM_M = 6;
const DECIMALS = 3;

/**
 * Cubic meters in a log by the Japanese agricultural standard, from the shortest small-end diameter.
 *
 * The standard's addition for oval ends and its variant for American logs are not applied: they were not seen in it.
 *
 * @formula V = decimals((d + taper)^2 * L / 10000, 3) [m3];
 *   d = jasDiameterCm(measuredCm: decimals(2.54 * diameterIn, 6)) [cm]; L = decimals(0.3048 * lengthFt, 6) [m];
 *   taper = 0 if L < 6, else (down(L) - 4) / 2 [cm]
 * @source JAS for logs, as timber traders print it
 * @source MAFF notice 1841 of 1967, size classes
 * @range d from 1 cm
 * @checked no printed table was seen: 11 sums by the formula and one printed rounding (7.6 m counts as 7)
 */
export function jasCubicMeters({ diameterIn, lengthFt }: { diameterIn: number; lengthFt: number }): number {
  mustBeScalable({ diameterIn, lengthFt }, { rule: "JAS", smallestIn: 0 });
  const diameterCm = jasDiameterCm(centimeters(diameterIn));
  mustBeAtLeast(1, diameterCm, "JAS diameter (whole cm)");
  const lengthM = meters(lengthFt);
  const taperCm = lengthM < LONG_FROM_M ? 0 : (downTo(1, lengthM) - 4) / 2;
  return toDecimals(DECIMALS, ((diameterCm + taperCm) ** 2 * lengthM) / 10_000);
}

/**
 * The class of diameter that the standard reads a log in.
 *
 * @formula d = down(measuredCm) if measuredCm < 14, else down(measuredCm, 2)
 * @source MAFF notice 1841 of 1967, size classes
 */
export function jasDiameterCm(measuredCm: number): number {
  return downTo(measuredCm < EVEN_FROM_CM ? 1 : 2, measuredCm);
}
