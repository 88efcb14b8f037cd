import { mustBeAtLeast } from "../errors";
import { BF_PER_FT3, CM_PER_IN, M3_PER_FT3, M_PER_FT, unitWords, VOLUMES } from "../units";
import { mustTaper } from "./cubic";
import { centimeters, meters } from "./metric";
import { downTo, toDecimals } from "../rounding";

/** The answer asked for. */
export const BRERETON_UNITS = unitWords(VOLUMES, "board feet", "m3", "ft3");

const M3_PER = { "board feet": M3_PER_FT3 / BF_PER_FT3, m3: 1, ft3: M3_PER_FT3 };

/** What the customs take off the measured length. */
const CUSTOMS_TRIM_TENTHS_M = 1;
const CUSTOMS_STEP = 2;
const CUSTOMS_DECIMALS = 3;

/**
 * Volume of a log by Brereton: the whole cylinder of the mean of the end diameters, with nothing off for the saw.
 *
 * The customs rounding: mean diameter down to even centimeters; length less 0.1 m, down to the even tenth of a meter;
 * cubic meters to three decimals, and other units from those.
 *
 * @formula V = m3 / 0.028316846592 * 12 if (unit or "board feet") = "board feet", m3 if unit = "m3", else m3 /
 *   0.028316846592;
 *   m3 = cylinderCubicMeters(diameterCm: d, lengthM: L) if (rounding or "none") = "none", else
 *   decimals(cylinderCubicMeters(diameterCm: d, lengthM: L), 3) [m3];
 *   d = 2.54 * m if (rounding or "none") = "none", else down(decimals(2.54 * m, 6), 2) [cm];
 *   L = 0.3048 * lengthFt if (rounding or "none") = "none", else down(decimals(0.3048 * lengthFt, 6) * 10 - 1, 2) /
 *   10 [m]; m = (smallIn + largeIn) / 2 [in]
 * @source hstimber.com, Brereton scale by the Japanese customs: mean of the end diameters, 0.7854, and the rounding
 * @source plain arithmetic: 12 board feet in a cubic foot
 * @source from memory: by the customs rounding it is down that the mean diameter goes to the even centimeter
 * @range the large end not under the small end; by the customs rounding from 2 cm and 0.3 m
 * @checked 1 of 1 worked example (60 cm by 12 m: 3.393 m3)
 */
export function breretonVolume({
  smallIn,
  largeIn,
  lengthFt,
  unit = "board feet",
  rounding = "none",
}: {
  smallIn: number;
  largeIn: number;
  lengthFt: number;
  unit?: keyof typeof BRERETON_UNITS;
  /** The sizes as measured, or cut as the Japanese customs cut them. */
  rounding?: "none" | "customs";
}): number {
  mustTaper(smallIn, largeIn, lengthFt, "Brereton");
  const meanIn = (smallIn + largeIn) / 2;
  const cubicMeters =
    rounding === "none"
      ? cylinderCubicMeters(meanIn * CM_PER_IN, lengthFt * M_PER_FT)
      : customsCubicMeters(centimeters(meanIn), meters(lengthFt));
  return cubicMeters / M3_PER[unit];
}

/**
 * Cubic meters in a cylinder.
 *
 * @formula V = pi / 4 * (diameterCm / 100)^2 * lengthM
 * @source plain geometry
 */
export function cylinderCubicMeters(diameterCm: number, lengthM: number): number {
  return (Math.PI / 4) * (diameterCm / 100) ** 2 * lengthM;
}

function customsCubicMeters(meanCm: number, lengthM: number): number {
  const diameterCm = downTo(CUSTOMS_STEP, meanCm);
  const tenths = downTo(CUSTOMS_STEP, lengthM * 10 - CUSTOMS_TRIM_TENTHS_M);
  mustBeAtLeast(CUSTOMS_STEP, diameterCm, "Brereton mean diameter by the customs (cm)");
  mustBeAtLeast(CUSTOMS_STEP / 10, tenths / 10, "Brereton length by the customs (m)");
  return toDecimals(CUSTOMS_DECIMALS, cylinderCubicMeters(diameterCm, tenths / 10));
}
