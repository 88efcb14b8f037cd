import { mustBeAbove, mustBeAtLeast, mustBeBetween } from "../errors";
import { IN_PER_FT } from "../units";

/** The foot of room that sawyers like to keep over the biggest log, for knots, flare and turning. */
export const CUSTOMARY_ROOM_IN = 12;

/**
 * Inches to spare between the mill's opening and a log as it turns; below 0 the log will not pass.
 * With sweep the log needs the most that its bow and its own half stand out on one side, and half the large end
 * on the other. The length says only whether such a sweep can be: a bow of a quarter of the length is no saw log.
 *
 * @formula spare = throatIn - (clearanceIn or 0) - turningWidthIn()
 * @source plain geometry: a bow in the shape of a parabola, straight taper, ends level
 * @range small end no larger than the large end; sweep up to a quarter of the length
 */
export function throatFitIn({
  throatIn,
  smallIn,
  largeIn,
  lengthFt,
  sweepIn = 0,
  clearanceIn = 0,
}: {
  throatIn: number;
  smallIn: number;
  largeIn: number;
  lengthFt: number;
  sweepIn?: number;
  clearanceIn?: number;
}): number {
  mustBeAbove(0, throatIn, "opening of the mill (in)");
  mustBeAbove(0, smallIn, "small end (in)");
  mustBeAtLeast(smallIn, largeIn, "large end (in)");
  mustBeAbove(0, lengthFt, "length (ft)");
  mustBeBetween(0, (lengthFt * IN_PER_FT) / 4, sweepIn, "sweep (in), for this length");
  mustBeAtLeast(0, clearanceIn, "clearance (in)");
  return throatIn - clearanceIn - turningWidthIn(smallIn, largeIn, sweepIn);
}

/**
 * Largest log to take on: the opening of the mill less the room to keep over it.
 *
 * @formula largest = throatIn - (clearanceIn or 12)
 * @source common practice, no source: a foot of room over the biggest log
 * @range clearance under the opening
 */
export function biggestLogIn({
  throatIn,
  clearanceIn = CUSTOMARY_ROOM_IN,
}: {
  throatIn: number;
  clearanceIn?: number;
}): number {
  mustBeAbove(clearanceIn, throatIn, "opening of the mill over the room to keep (in)");
  return throatIn - clearanceIn;
}

/**
 * The bow and the half log stand out furthest where their slopes cancel: x from the small end, as a share of the length.
 *
 * @formula w = bow + half + D / 2; bow = 4 * S * x * (1 - x) [in]; half = (d + (D - d) * x) / 2 [in];
 *   x = min(1, 1 / 2 + (D - d) / (16 * S)) if S > 0, else 1; D = largeIn; d = smallIn; S = sweepIn or 0 [in]
 * @source plain geometry
 */
export function turningWidthIn(smallIn: number, largeIn: number, sweepIn: number): number {
  const furthest = sweepIn > 0 ? Math.min(1, 0.5 + (largeIn - smallIn) / (16 * sweepIn)) : 1;
  const bowIn = 4 * sweepIn * furthest * (1 - furthest);
  const halfIn = (smallIn + (largeIn - smallIn) * furthest) / 2;
  return bowIn + halfIn + largeIn / 2;
}
