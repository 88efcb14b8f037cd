import { mustBeAbove } from "../errors";
import { upTo } from "../rounding";

/** What it takes to flatten one face of a slab, and both. */
export interface Flattening {
  /** Layers that are taken off, each at most a bite deep. */
  layers: number;
  /** Lanes of a layer, side by side. */
  lanes: number;
  /** Passes over one face. */
  passes: number;
  minutes: number;
  /** Thickness that is gone once both faces are flat: what one was out, for the hollow of one is the crown of the other. */
  thicknessLostIn: number;
}

/**
 * Passes, minutes and thickness lost to flatten a slab that is out of flat by so much, with a head led over it in lanes.
 *
 * @formula minutes = passes * lengthFt / feedFpm; passes = layers * lanes; layers = up(outIn / biteIn);
 *   lanes = up(widthIn / stepoverIn)
 * @source plain geometry: an even thickness that is cupped, bowed or twisted
 * @range everything above 0
 */
export function flattening({ widthIn, lengthFt, outIn, biteIn, stepoverIn, feedFpm }: Slab): Flattening {
  mustBeAbove(0, widthIn, "width (in)");
  mustBeAbove(0, lengthFt, "length (ft)");
  mustBeAbove(0, outIn, "out of flat (in)");
  mustBeAbove(0, biteIn, "bite (in)");
  mustBeAbove(0, stepoverIn, "stepover (in)");
  mustBeAbove(0, feedFpm, "feed (ft/min)");
  const layers = upTo(1, outIn / biteIn);
  const lanes = upTo(1, widthIn / stepoverIn);
  const passes = layers * lanes;
  return { layers, lanes, passes, minutes: (passes * lengthFt) / feedFpm, thicknessLostIn: outIn };
}

interface Slab {
  widthIn: number;
  lengthFt: number;
  /** How far the face stands out over its own lowest place. */
  outIn: number;
  biteIn: number;
  stepoverIn: number;
  feedFpm: number;
}
