import { mustBeAbove, mustBeBetween } from "../errors";

/**
 * Width of a flat cut through a round log, at a depth below its top.
 *
 * @formula w = 2 * sqrt(h * (D - h)); D = diameterIn; h = depthIn
 * @source plain geometry: the chord of a circle
 * @checked 1 of 1 printed chord (59.86, Machinery's Handbook 31, p. 79)
 * @range depth from 0 at the top to the diameter at the bottom, where the width is 0
 */
export function cutWidthIn({ diameterIn, depthIn }: { diameterIn: number; depthIn: number }): number {
  mustBeAbove(0, diameterIn, "diameter (in)");
  mustBeBetween(0, diameterIn, depthIn, "depth below the top of the log (in)");
  return 2 * Math.sqrt(depthIn * (diameterIn - depthIn));
}
