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
 * @param teeth1 Teeth of one sprocket.
 * @param teeth2 Teeth of the other sprocket.
 * @param centers Distance between the shafts' centers. A bare number is inches; 400 mm works too.
 * @param pitch Pitch of the chain. A bare number is inches; 1/2 works too.
 * @param [rounding] even, up to an even count, when left out; none for the exact length in pitches.
 * @returns Links
 * @example =BOLE.CHAINLINKS(17, 65, 15, 0.5) gives 104
 * @example =BOLE.CHAINLINKS(17, 65, 15, 0.5, "none") gives 102.9
 * @example =BOLE.CHAINLINKS(17, 65, 6, 0.5) gives #N/A
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @see CHAINCENTERS
 * @words roller chain length, how many links, feed chain
 * @picture chain
 */
export function CHAINLINKS(
  teeth1: unknown[][],
  teeth2: unknown[][],
  centers: unknown[][],
  pitch: unknown[][],
  rounding?: unknown[][],
): unknown[][] {
  return spread(
    {
      teeth1: count(teeth1, "teeth1"),
      teeth2: count(teeth2, "teeth2"),
      centersIn: inches(centers, "centers"),
      pitchIn: inches(pitch, "pitch"),
      rounding: optional(oneOf({ even: [], none: [] }, rounding, "rounding")),
    },
    chainLinks,
  );
}

/**
 * Distance between shafts at which a chain of a count of links is tight.
 *
 * A chain wants a little slack: set the shafts a hair closer, or fit a take-up.
 *
 * @customfunction CHAINCENTERS
 * @param teeth1 Teeth of one sprocket.
 * @param teeth2 Teeth of the other sprocket.
 * @param links Links of the chain.
 * @param pitch Pitch of the chain. A bare number is inches; 1/2 works too.
 * @returns Inches
 * @example =BOLE.CHAINCENTERS(17, 65, 104, 0.5) gives 15.272
 * @example =BOLE.CHAINCENTERS(17, 65, 60, 0.5) gives #N/A
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @see CHAINLINKS
 * @words sprocket center distance, roller chain
 * @picture chain
 */
export function CHAINCENTERS(
  teeth1: unknown[][],
  teeth2: unknown[][],
  links: unknown[][],
  pitch: unknown[][],
): unknown[][] {
  return spread(
    {
      teeth1: count(teeth1, "teeth1"),
      teeth2: count(teeth2, "teeth2"),
      links: count(links, "links"),
      pitchIn: inches(pitch, "pitch"),
    },
    chainCentersIn,
  );
}

/**
 * Speed of a roller chain.
 *
 * Teeth times pitch is what a turn moves; the same for either sprocket of a pair.
 *
 * @customfunction CHAINSPEED
 * @param teeth Teeth of a sprocket.
 * @param pitch Pitch of the chain. A bare number is inches; 1/2 works too.
 * @param rpm Speed of that sprocket, turns per minute.
 * @returns Feet per minute
 * @example =BOLE.CHAINSPEED(18, 0.5, 60) gives 45
 * @example =BOLE.CHAINSPEED(17.5, 0.5, 60) gives #VALUE!
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @words feed speed of a chain, conveyor speed, log deck chain
 */
export function CHAINSPEED(teeth: unknown[][], pitch: unknown[][], rpm: unknown[][]): unknown[][] {
  return spread(
    { teeth: count(teeth, "teeth"), pitchIn: inches(pitch, "pitch"), rpm: number(rpm, "rpm") },
    chainSpeedFpm,
  );
}
