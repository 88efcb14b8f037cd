import { mustBeBetween } from "../errors";
import { FT3_PER_HOPPUS_FT, IN2_PER_FT2 } from "../units";
import { inCubicUnit, type CubicUnit } from "./cubic-unit";
import { mustBeScalable, THICKEST_IN } from "./log";

/** The girth of the thickest log. */
const LARGEST_GIRTH_IN = Math.round(THICKEST_IN * Math.PI);

/**
 * Volume of a log by Hoppus: the square of the quarter girth at mid-length, by the length.
 *
 * The rule is taped down to the quarter inch; tape so, the girth is used as given.
 *
 * @formula V = inCubicUnit(ft3: H * 4 / pi, unit: unit or "hoppus ft"); H = (G / 4)^2 * L / 144 [hoppus ft];
 *   G = girthIn; L = lengthFt
 * @source woodland-management.co.uk, hoppus foot
 * @range G up to 942 in
 * @checked 4 of 4 published equivalents of the hoppus foot
 */
export function hoppusVolume({
  girthIn,
  lengthFt,
  unit = "hoppus ft",
}: {
  girthIn: number;
  lengthFt: number;
  unit?: CubicUnit;
}): number {
  mustBeBetween(0, LARGEST_GIRTH_IN, girthIn, "Hoppus girth (in)");
  mustBeScalable({ diameterIn: girthIn / Math.PI, lengthFt }, { rule: "Hoppus", smallestIn: 0 });
  const hoppusFeet = ((girthIn / 4) ** 2 * lengthFt) / IN2_PER_FT2;
  return inCubicUnit(hoppusFeet * FT3_PER_HOPPUS_FT, unit);
}
