import { mustBeBetween } from "../errors";
import { hairOver, hairUnder } from "../rounding";
import { IN2_PER_FT2 } from "../units";
import { inCubicUnit, type CubicUnit } from "./cubic-unit";
import { mustBeScalable, THICKEST_IN } from "./log";

/** Square feet in a circle of one inch: 0.005454, as foresters round it. */
const FT2_PER_SQUARE_IN_OF_DIAMETER = Math.PI / 4 / IN2_PER_FT2;
/** Thinner than the finest twig: only keeps nonsense out. */
const SMALLEST_IN = 0.1;

interface Ends {
  smallIn: number;
  largeIn: number;
  lengthFt: number;
}
type EndSizes = Ends & { unit?: CubicUnit };

/**
 * Cubic feet in a log by Smalian's formula, from both ends. It overstates a log with a flared butt.
 *
 * @formula V = cubicFeet(squareOfDiameterIn2: (d^2 + D^2) / 2); d = smallIn; D = largeIn
 * @source Briggs 1994, Table 2-1
 * @range the large end not under the small end
 * @checked 1 of 1 worked example (d = 12 cm, D = 20 cm, L = 6 m: 0.128 m3)
 */
export function smalianFt3({ smallIn, largeIn, lengthFt }: Ends): number {
  mustTaper(smallIn, largeIn, lengthFt, "Smalian");
  return cubicFeet((smallIn ** 2 + largeIn ** 2) / 2, lengthFt);
}

/**
 * Volume of a log by Smalian's formula in the unit asked for.
 *
 * @formula V = inCubicUnit(ft3: smalianFt3(), unit: unit or "ft3")
 * @source plain arithmetic
 */
export function smalianVolume({ unit = "ft3", ...ends }: EndSizes): number {
  return inCubicUnit(smalianFt3(ends), unit);
}

/**
 * Volume of a log by Huber's formula, from the diameter at mid-length.
 *
 * @formula V = inCubicUnit(ft3: v, unit: unit or "ft3"); v = cubicFeet(squareOfDiameterIn2: d^2) [ft3]; d = middleIn
 * @source Briggs 1994, Table 2-1
 * @range d from 0.1 in
 * @checked 1 of 1 worked example (40 cm, 10 m: 1.256 m3, printed with 0.785 for pi / 4)
 */
export function huberVolume({
  middleIn,
  lengthFt,
  unit = "ft3",
}: {
  middleIn: number;
  lengthFt: number;
  unit?: CubicUnit;
}): number {
  mustBeScalable({ diameterIn: middleIn, lengthFt }, { rule: "Huber", smallestIn: SMALLEST_IN });
  return inCubicUnit(cubicFeet(middleIn ** 2, lengthFt), unit);
}

/**
 * Volume of a log by Newton's formula, from both ends and the middle: exact for cone, cylinder, paraboloid and neiloid.
 *
 * @formula V = inCubicUnit(ft3: v, unit: unit or "ft3");
 *   v = cubicFeet(squareOfDiameterIn2: (d^2 + 4 * m^2 + D^2) / 6) [ft3]; d = smallIn; m = middleIn; D = largeIn
 * @source Briggs 1994, Table 2-1
 * @range the middle between the two ends
 */
export function newtonVolume({
  smallIn,
  middleIn,
  largeIn,
  lengthFt,
  unit = "ft3",
}: EndSizes & { middleIn: number }): number {
  mustTaper(smallIn, largeIn, lengthFt, "Newton");
  mustBeBetween(
    hairUnder(smallIn),
    hairOver(largeIn),
    middleIn,
    "Newton diameter at mid-length (in), between the ends",
  );
  return inCubicUnit(cubicFeet((smallIn ** 2 + 4 * middleIn ** 2 + largeIn ** 2) / 6, lengthFt), unit);
}

/**
 * Volume of a log as a cone with its tip cut off, from both ends.
 *
 * @formula V = inCubicUnit(ft3: v, unit: unit or "ft3");
 *   v = cubicFeet(squareOfDiameterIn2: (d^2 + d * D + D^2) / 3) [ft3]; d = smallIn; D = largeIn
 * @source Briggs 1994, Table 2-1, two-end conic
 * @range the large end not under the small end
 */
export function coneVolume({ smallIn, largeIn, lengthFt, unit = "ft3" }: EndSizes): number {
  mustTaper(smallIn, largeIn, lengthFt, "cone");
  return inCubicUnit(cubicFeet((smallIn ** 2 + smallIn * largeIn + largeIn ** 2) / 3, lengthFt), unit);
}

/** Refuses a log whose butt is thinner than its top. */
export function mustTaper(smallIn: number, largeIn: number, lengthFt: number, what: string): void {
  mustBeScalable({ diameterIn: smallIn, lengthFt }, { rule: what, which: "small-end", smallestIn: SMALLEST_IN });
  mustBeBetween(hairUnder(smallIn), THICKEST_IN, largeIn, `${what} large-end diameter (in), not under the small end`);
}

/**
 * Cubic feet in a round of so many square inches of squared diameter.
 *
 * @formula V = pi / 4 / 144 * squareOfDiameterIn2 * lengthFt
 * @source plain geometry
 */
export function cubicFeet(squareOfDiameterIn2: number, lengthFt: number): number {
  return FT2_PER_SQUARE_IN_OF_DIAMETER * squareOfDiameterIn2 * lengthFt;
}
