import { count, inches, number, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { chainCentersIn, chainLinks, chainSpeedFpm } from "../../math/mill/chain";

/**
 * Links of a roller chain over two sprockets.
 *
 * An even count joins without an offset link, the weak place of a chain. Usual centers are 30 to 50 pitches, and the
 * small sprocket wants at least 120 degrees of chain round it (Mott).
 *
 * @customfunction CHAINLINKS
 * @returns Links
 * @example =BOLE.CHAINLINKS(17, 65, 15, 0.5) gives 104
 * @example =BOLE.CHAINLINKS(17, 65, 15, 0.5, "none") gives 102.9
 * @example =BOLE.CHAINLINKS(17, 65, 6, 0.5) gives #N/A
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @see CHAINCENTERS
 * @words roller chain length, how many links, feed chain
 * @picture chain
 */
export const CHAINLINKS = spread(
  {
    /** Teeth of one sprocket. */
    teeth1: count,
    /** Teeth of the other sprocket. */
    teeth2: count,
    /** Distance between the shafts' centers. */
    centersIn: inches,
    /** Pitch of the chain. */
    pitchIn: inches,
    /** even, up to an even count, or none for the exact length in pitches. */
    rounding: optional(oneOf({ even: [], none: [] }), "even"),
  },
  chainLinks,
);

/**
 * Distance between shafts at which a chain of a count of links is tight.
 *
 * A chain wants a little slack: set the shafts a hair closer, or fit a take-up.
 *
 * @customfunction CHAINCENTERS
 * @returns Inches
 * @example =BOLE.CHAINCENTERS(17, 65, 104, 0.5) gives 15.272
 * @example =BOLE.CHAINCENTERS(17, 65, 60, 0.5) gives #N/A
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @see CHAINLINKS
 * @words sprocket center distance, roller chain
 * @picture chain
 */
export const CHAINCENTERS = spread(
  {
    /** Teeth of one sprocket. */
    teeth1: count,
    /** Teeth of the other sprocket. */
    teeth2: count,
    /** Links of the chain. */
    links: count,
    /** Pitch of the chain. */
    pitchIn: inches,
  },
  chainCentersIn,
);

/**
 * Speed of a roller chain.
 *
 * Teeth times pitch is what a turn moves; the same for either sprocket of a pair.
 *
 * @customfunction CHAINSPEED
 * @returns Feet per minute
 * @example =BOLE.CHAINSPEED(18, 0.5, 60) gives 45
 * @example =BOLE.CHAINSPEED(17.5, 0.5, 60) gives #VALUE!
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @words feed speed of a chain, conveyor speed, log deck chain
 */
export const CHAINSPEED = spread(
  {
    /** Teeth of a sprocket. */
    teeth: count,
    /** Pitch of the chain. */
    pitchIn: inches,
    /** Speed of that sprocket, turns per minute. */
    rpm: number,
  },
  chainSpeedFpm,
);
