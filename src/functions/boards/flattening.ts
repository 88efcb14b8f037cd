import { boardLength, feetPerMinute, inches } from "../../cells/read";
import { table, type TableCell } from "../../cells/spread";
import { flattening } from "../../math/boards/flattening";

/**
 * Passes, minutes and thickness lost to flatten a cupped, bowed or twisted slab with a router sled or planing head.
 *
 * Lay the slab so that it rocks least, and measure how far the face stands out over its lowest place: that much comes off
 * at the highest. The minutes are those of cutting alone. Both faces take twice the passes, and the slab loses once what
 * it is out, because the hollow of one face is the crown of the other.
 *
 * @customfunction FLATTENING
 * @returns A table: figure, one face, both faces
 * @example =BOLE.FLATTENING(30, 8, "3/4", "1/8", 1, 15) gives a table of 6 rows
 * @example =BOLE.FLATTENING(30, 8, "3/4", "1/8", 1, "slow") gives #VALUE!
 * @caution Clamp the slab and stand clear of the head. The bite and the feed are the maker's of the cutter and machine to limit.
 * @see SLABFEET
 * @words slab flattening, router sled, surfacing, planing slabs, cup, bow, twist, warp, how thick will it finish
 */
export const FLATTENING = table(
  {
    /** Width of the slab. */
    widthIn: inches,
    /** Length of the slab. */
    lengthFt: boardLength,
    /** How far the face is out of flat. */
    outIn: inches,
    /** Depth of one pass. */
    biteIn: inches,
    /** From one lane to the next. */
    stepoverIn: inches,
    /** Speed of the head along the slab. */
    feedFpm: feetPerMinute,
  },
  (slab): TableCell[][] => {
    const { layers, lanes, passes, minutes, thicknessLostIn } = flattening(slab);
    return [
      ["figure", "one face", "both faces"],
      ["layers", layers, 2 * layers],
      ["lanes of a layer", lanes, lanes],
      ["passes", passes, 2 * passes],
      ["minutes of cutting", minutes, 2 * minutes],
      ["thickness lost, in", thicknessLostIn, thicknessLostIn],
    ];
  },
);
