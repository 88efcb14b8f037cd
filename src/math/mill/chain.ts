import { mustBeAtLeast } from "../errors";
import { NEAR } from "../rounding";
import { IN_PER_FT } from "../units";

interface Sprockets {
  teeth1: number;
  teeth2: number;
  pitchIn: number;
}

/** Whether the count of links is brought up to an even number, which needs no offset link, or left as it comes. */
export type LinkRounding = "even" | "none";

/**
 * Links of a roller chain over two sprockets.
 *
 * @formula N = 2 * up(L / 2) if (rounding or "even") = "even", else L [links];
 *   L = 2 * C + (teeth1 + teeth2) / 2 + toothSpread() / C [links]; C = centersIn / pitchIn [pitches]
 * @source Mott 4e, Example 7-3, p 295
 * @range centers from where the pitch circles touch
 * @checked 2 of 2 printed examples
 */
export function chainLinks({ teeth1, teeth2, centersIn, pitchIn, rounding = "even" }: ChainLinks): number {
  const touching = touchingCentersIn({ teeth1, teeth2, pitchIn });
  mustBeAtLeast(touching, centersIn, "centers (in), from where the sprockets touch");
  const pitches = centersIn / pitchIn;
  const links = 2 * pitches + (teeth1 + teeth2) / 2 + toothSpread(teeth1, teeth2) / pitches;
  // Centers worked out for 104 links ask for 104 again, not for 106 over the last binary digit.
  return rounding === "even" ? 2 * Math.ceil(links / 2 - NEAR) : links;
}

/**
 * Distance between centers at which a chain of a count of links is tight.
 *
 * @formula C = (L + sqrt(L^2 - 8 * toothSpread())) / 4 * p; L = links - (teeth1 + teeth2) / 2 [links]; p = pitchIn
 * @source Mott 4e, Example 7-3, p 295
 * @source Bhandari, Examples 14.3 and 14.4
 * @range enough links to go round sprockets whose pitch circles touch
 * @checked 4 of 4 printed examples
 */
export function chainCentersIn({ teeth1, teeth2, links, pitchIn }: Sprockets & { links: number }): number {
  const centersIn = touchingCentersIn({ teeth1, teeth2, pitchIn });
  const fewest = chainLinks({ teeth1, teeth2, centersIn, pitchIn, rounding: "none" });
  mustBeAtLeast(fewest, links, "links, from as many as go round touching sprockets");
  const straight = links - (teeth1 + teeth2) / 2;
  return ((straight + Math.sqrt(straight ** 2 - 8 * toothSpread(teeth1, teeth2))) / 4) * pitchIn;
}

/**
 * Speed of a chain.
 *
 * @formula v = p * N * n / 12; p = pitchIn; N = teeth; n = rpm
 * @source plain geometry
 */
export function chainSpeedFpm({ teeth, pitchIn, rpm }: { teeth: number; pitchIn: number; rpm: number }): number {
  return (pitchIn * teeth * rpm) / IN_PER_FT;
}

/**
 * Pitch diameter of a sprocket.
 *
 * @formula D = p / sin(180 * deg / N); p = pitchIn; N = teeth
 * @source Mott 4e, Example 7-3, p 295
 * @range 3 teeth or more, the fewest that make a polygon
 * @checked 3 of 3 printed examples
 */
export function sprocketDiameterIn({ teeth, pitchIn }: { teeth: number; pitchIn: number }): number {
  mustBeAtLeast(3, teeth, "sprocket teeth");
  return pitchIn / Math.sin(Math.PI / teeth);
}

interface ChainLinks extends Sprockets {
  centersIn: number;
  rounding?: LinkRounding | undefined;
}

function touchingCentersIn({ teeth1, teeth2, pitchIn }: Sprockets): number {
  return (sprocketDiameterIn({ teeth: teeth1, pitchIn }) + sprocketDiameterIn({ teeth: teeth2, pitchIn })) / 2;
}

/**
 * What two sprockets of different teeth add to a chain, times the centers in pitches.
 *
 * @formula s = ((teeth2 - teeth1) / (2 * pi))^2
 * @source plain geometry
 */
export function toothSpread(teeth1: number, teeth2: number): number {
  return ((teeth2 - teeth1) / (2 * Math.PI)) ** 2;
}
