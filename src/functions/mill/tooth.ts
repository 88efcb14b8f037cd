import { feetPerMinute, inches } from "../../cells/read";
import { spread } from "../../cells/spread";
import { feedForBiteFpm, gulletFillShare, toothBiteIn } from "../../math/mill/tooth";

/**
 * Wood that each tooth takes, its bite.
 *
 * Every tooth is taken to cut. Of a blade set left, right and straight each tooth clears a part of the kerf only.
 *
 * @customfunction BITE
 * @returns Inches
 * @example =BOLE.BITE(40, 5000, 0.875) gives 0.007
 * @example =BOLE.BITE(40, "quick", 0.875) gives #VALUE!
 * @caution Blade makers give the bite their teeth take; one forced beyond it dives, heats and cracks.
 * @see FEEDFOR
 * @words chip load, feed per tooth, tooth bite, wavy cut
 * @picture teeth
 */
export const BITE = spread(
  {
    /** Feed of the log or the head. */
    feedFpm: feetPerMinute,
    /** Speed of the band. */
    speedFpm: feetPerMinute,
    /** Tooth to tooth. */
    pitchIn: inches,
  },
  toothBiteIn,
);

/**
 * Feed at which each tooth takes a wanted bite.
 *
 * Check the gullet too: in a wide cut it fills before the tooth has its full bite, and GULLETFILL says by how much.
 *
 * @customfunction FEEDFOR
 * @returns Feet per minute
 * @example =BOLE.FEEDFOR(0.007, 5000, 0.875) gives 40
 * @example =BOLE.FEEDFOR(0.007, 5000, "wide") gives #VALUE!
 * @caution Blade makers give the bite their teeth take; one forced beyond it dives, heats and cracks.
 * @see BITE
 * @words how fast to feed, feed rate, carriage speed, feed speed, feed for the teeth
 * @picture teeth
 */
export const FEEDFOR = spread(
  {
    /** Bite of a tooth. */
    biteIn: inches,
    /** Speed of the band. */
    speedFpm: feetPerMinute,
    /** Tooth to tooth. */
    pitchIn: inches,
  },
  feedForBiteFpm,
);

/**
 * Share of the gullet that the wood of one cut would fill, before it swells into sawdust.
 *
 * The gullet's area is taken as pitch times depth over 1.75, and a sharpening firm's trade note uses a half to three
 * quarters of it in softwood; 0.3 for hardwood to 0.7 for softwood is from memory. Over 1 the dust cannot fit at all.
 *
 * @customfunction GULLETFILL
 * @returns Share of 1
 * @example =BOLE.GULLETFILL(0.007, 24, 0.875, 0.25) gives 1.344
 * @example =BOLE.GULLETFILL(0.004, 12, 0.875, 0.25) gives 0.384
 * @example =BOLE.GULLETFILL(0.007, 24, 0.875, "deep") gives #VALUE!
 * @caution A packed gullet makes a band dive, heat and crack: slow the feed in a wide cut, by the blade maker's advice.
 * @see BITE
 * @words sawdust packing, wide cut, gullet capacity, blade wanders, wavy cut, dust left on the board
 * @picture teeth
 */
export const GULLETFILL = spread(
  {
    /** Bite of a tooth. */
    biteIn: inches,
    /** Width of wood the band goes through. */
    depthIn: inches,
    /** Tooth to tooth. */
    pitchIn: inches,
    /** Depth of the gullet. */
    gulletIn: inches,
  },
  gulletFillShare,
);
