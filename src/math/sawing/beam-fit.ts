import { mustBeAbove, mustBeAtLeast, NoAnswer, short } from "../errors";

/** Taper is counted over this length. */
const TAPER_OVER_FT = 4;

/**
 * Inches to spare in the diameter when a timber of a section is boxed out of a log, its thin end at the small end of the
 * log or so many feet nearer the butt; below 0 it shows more wane than is allowed.
 *
 * Wane is measured across a face, from the corner that is missing. A corner with wane has it on both its faces, each at
 * most as much as allowed.
 *
 * @formula spare = D + (taperIn or 0) * (lengthFt or 0) / 4 - 2 * reach;
 *   reach = max(hypot(w / 2 - k, h / 2), hypot(w / 2, h / 2 - k)) [in]; D = diameterIn; h = heightIn; w = widthIn;
 *   k = waneIn or 0 [in]
 * @source plain geometry: a rectangle in a circle, its corners cut back
 * @range wane under half of either side
 */
export function beamFitIn({ diameterIn, heightIn, widthIn, lengthFt = 0, taperIn = 0, waneIn = 0 }: Beam): number {
  mustBeAbove(0, diameterIn, "diameter (in)");
  mustBeAbove(0, heightIn, "height (in)");
  mustBeAbove(0, widthIn, "width (in)");
  mustBeAtLeast(0, lengthFt, "length (ft)");
  mustBeAtLeast(0, taperIn, "taper (in in 4 ft)");
  mustBeAtLeast(0, waneIn, "wane (in)");
  const half = Math.min(heightIn, widthIn) / 2;
  if (!(waneIn < half))
    throw new NoAnswer(`wane (in): wanted less than ${short(half)}, half a side, got ${short(waneIn)}`);
  const reachIn = Math.max(
    Math.hypot(widthIn / 2 - waneIn, heightIn / 2),
    Math.hypot(widthIn / 2, heightIn / 2 - waneIn),
  );
  return diameterIn + (taperIn * lengthFt) / TAPER_OVER_FT - 2 * reachIn;
}

interface Beam {
  /** At the small end, inside bark. */
  diameterIn: number;
  heightIn: number;
  widthIn: number;
  /** From the small end to the thin end of the timber. */
  lengthFt?: number | undefined;
  /** What the diameter gains in 4 ft. */
  taperIn?: number | undefined;
  waneIn?: number | undefined;
}
