import { mustBeAtLeast } from "../errors";
import { CM_PER_IN, IN_PER_FT, M_PER_FT, M3_PER_FT3, BF_PER_FT3 } from "../units";
import { mustTaper } from "./cubic";
import { centimeters, meters } from "./metric";
import { downTo, toDecimals } from "./rounding";

/** The answer asked for. */
export const BRERETON_UNITS = {
  "board feet": ["bf", "bd ft", "fbm"],
  m3: ["m^3", "m³", "cubic meters"],
  ft3: [],
} as const;
/** The sizes as measured, or cut as the Japanese customs cut them. */
export const BRERETON_ROUNDINGS = { none: ["exact"], customs: ["Japanese customs"] } as const;

const BF_PER = { "board feet": 1, m3: BF_PER_FT3 / M3_PER_FT3, ft3: BF_PER_FT3 };

/** What the customs take off the measured length. */
const CUSTOMS_TRIM_TENTHS_M = 1;
const CUSTOMS_STEP = 2;
const CUSTOMS_DECIMALS = 3;

/**
 * Volume of a log by Brereton: the whole cylinder of the mean of the end diameters, with nothing off for the saw.
 *
 * The customs rounding: mean diameter down to even centimeters; length less 0.1 m, down to the even tenth of a meter;
 * cubic meters to three decimals, and other units from those. The direction of the even centimeter is from memory.
 *
 * @formula BF = 0.7854 * ((d + D) / 2)^2 * L / 12 (pi / 4 unrounded), d and D in inches, L in feet
 * @source hstimber.com, Brereton scale by the Japanese customs: mean of the end diameters, 0.7854, and the rounding
 * @source plain arithmetic: 12 board feet in a cubic foot
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
  rounding?: keyof typeof BRERETON_ROUNDINGS;
}): number {
  mustTaper(smallIn, largeIn, lengthFt, "Brereton");
  const meanIn = (smallIn + largeIn) / 2;
  return (
    (rounding === "none" ? cylinderBoardFeet(meanIn, lengthFt) : customsBoardFeet(meanIn, lengthFt)) / BF_PER[unit]
  );
}

function cylinderBoardFeet(diameterIn: number, lengthFt: number): number {
  return ((Math.PI / 4) * diameterIn ** 2 * lengthFt) / IN_PER_FT;
}

function customsBoardFeet(meanIn: number, lengthFt: number): number {
  const diameterCm = downTo(CUSTOMS_STEP, centimeters(meanIn));
  const tenths = downTo(CUSTOMS_STEP, meters(lengthFt) * 10 - CUSTOMS_TRIM_TENTHS_M);
  mustBeAtLeast(CUSTOMS_STEP, diameterCm, "Brereton mean diameter by the customs (cm)");
  mustBeAtLeast(CUSTOMS_STEP / 10, tenths / 10, "Brereton length by the customs (m)");
  const exact = cylinderBoardFeet(diameterCm / CM_PER_IN, tenths / 10 / M_PER_FT);
  return toDecimals(CUSTOMS_DECIMALS, exact / BF_PER.m3) * BF_PER.m3;
}
