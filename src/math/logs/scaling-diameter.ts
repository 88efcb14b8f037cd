import { mustBeAbove, mustBeBelow, mustBeBetween, NoAnswer } from "../errors";
import { mustTaper } from "./cubic";
import { THICKEST_IN } from "./log";
import { mean } from "../numbers";
import { downTo, hairOver, nearest, nearestHalfDown } from "../rounding";

/** How a scaling diameter becomes whole inches. */
const TO_WHOLE_INCHES = {
  none: (inches: number) => inches,
  nearest: (inches: number) => nearestHalfDown(1, inches),
  "nearest up": (inches: number) => nearest(1, inches),
  down: (inches: number) => downTo(1, inches),
};

/**
 * Scaling diameter of a log from readings across one end.
 *
 * Nearest inch: Georgia, Vermont, Wengert. An exact half is dropped by the Idaho contest rules; Georgia and Wengert share
 * halves out, once up, once down: alternate "nearest" and "nearest up". Always down: a Montana lecture.
 *
 * @formula D = m if (rounding or "none") = "none", halfdown(m) if rounding = "nearest", nearest(m) if rounding =
 *   "nearest up", else down(m); m = mean(diametersIn) [in]
 * @source Georgia OCGA 2-14-80, paragraph (e)
 * @source Idaho school forestry contest, scaling: 8 + 13 = 21, halved 10.5, counts 10
 * @source Wengert log scale: nearest, halves once up, then down
 * @source Montana FOR 274: always down
 * @range readings up to 300 in
 * @checked 1 of 1 printed example (readings 8 and 13: 10)
 */
export function scalingDiameterIn({
  diametersIn,
  rounding = "none",
}: {
  diametersIn: readonly number[];
  rounding?: keyof typeof TO_WHOLE_INCHES;
}): number {
  if (diametersIn.length === 0) throw new NoAnswer("diameters (in): wanted at least one reading, got none");
  for (const reading of diametersIn) mustBeBetween(0, THICKEST_IN, reading, "diameter (in)");
  return TO_WHOLE_INCHES[rounding](mean(diametersIn));
}

/**
 * Diameter inside bark from a tape round the log.
 *
 * @formula D = G / pi - 2 * b; G = girthIn; b = barkIn or 0 [in]
 * @source plain geometry
 * @range bark thinner than the radius
 */
export function girthDiameterIn({ girthIn, barkIn = 0 }: { girthIn: number; barkIn?: number }): number {
  const overBarkIn = girthIn / Math.PI;
  mustBeAbove(0, girthIn, "girth (in)");
  mustBeBelow(THICKEST_IN * Math.PI, girthIn, "girth (in)");
  mustBeBelow(overBarkIn / 2, barkIn, "bark thickness (in), under half the diameter");
  return overBarkIn - 2 * barkIn;
}

/**
 * Diameter of a log at a distance from its small end, by straight taper between the ends.
 *
 * @formula d = s + (l - s) * x / L; s = smallIn; l = largeIn; x = distanceFt; L = lengthFt
 * @source plain geometry
 * @range x from 0 to L; the large end not under the small end
 */
export function diameterAtIn({
  smallIn,
  largeIn,
  lengthFt,
  distanceFt,
}: {
  smallIn: number;
  largeIn: number;
  lengthFt: number;
  distanceFt: number;
}): number {
  mustTaper(smallIn, largeIn, lengthFt, "log");
  mustBeBetween(0, hairOver(lengthFt), distanceFt, "distance from the small end (ft), within the log");
  return smallIn + ((largeIn - smallIn) * distanceFt) / lengthFt;
}
