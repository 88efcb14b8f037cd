import { inches, list, logLength, mayBeZero, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { diameterAtIn, girthDiameterIn, scalingDiameterIn } from "../../math/logs/scaling-diameter";

/** How a scaling diameter becomes whole inches, and other names for it. */
const ROUNDINGS = {
  none: ["exact"],
  nearest: ["nearest down"],
  "nearest up": ["half up"],
  down: ["whole inch", "round down"],
};

/**
 * Scaling diameter from two or more readings across one end of a log.
 *
 * Who rounds how: to the nearest inch, Georgia, Vermont and Wengert; exact halves shared out, once up and once down, Georgia
 * and Wengert (alternate "nearest up" and "nearest"); halves dropped, the Idaho contest rules; always down, a Montana lecture.
 *
 * @customfunction SCALEDIAMETER
 * @returns Inches
 * @example =BOLE.SCALEDIAMETER({8;13}, "nearest") gives 10
 * @example =BOLE.SCALEDIAMETER({19;20.5}) gives 19.75
 * @example =BOLE.SCALEDIAMETER({8;-13}) gives #VALUE!
 * @words average diameter, oval log, two diameters
 * @picture diameters
 */
export const SCALEDIAMETER = spread(
  {
    /** The readings, a range. */
    diametersIn: list(inches),
    /** none, nearest (an exact half dropped), nearest up (an exact half counted) or down. */
    rounding: optional(oneOf(ROUNDINGS), "none"),
  },
  scalingDiameterIn,
);

/**
 * Diameter inside bark from a tape round the log and the thickness of its bark.
 *
 * @customfunction GIRTHDIAMETER
 * @returns Inches
 * @example =BOLE.GIRTHDIAMETER(75.4, 0.5) gives 23.00
 * @example =BOLE.GIRTHDIAMETER(75.4) gives 24.00
 * @example =BOLE.GIRTHDIAMETER(12, 2) gives #N/A
 * @words circumference, tape round the tree, bark thickness, girth
 * @picture girth
 */
export const GIRTHDIAMETER = spread(
  {
    /** Girth over bark. */
    girthIn: inches,
    /** Thickness of the bark on one side. */
    barkIn: optional(inches, 0),
  },
  girthDiameterIn,
);

/**
 * Diameter of a log at a distance from its small end, by straight taper.
 *
 * @customfunction DIAMETERAT
 * @returns Inches
 * @example =BOLE.DIAMETERAT(16, 20, 16, 8) gives 18
 * @example =BOLE.DIAMETERAT(16, 20, 16, 17) gives #N/A
 * @words taper, diameter along a log, where to buck
 * @picture taper
 */
export const DIAMETERAT = spread(
  {
    /** Small-end diameter. */
    smallIn: inches,
    /** Large-end diameter. */
    largeIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Distance from the small end; none is the small end itself. */
    distanceFt: mayBeZero(logLength),
  },
  diameterAtIn,
);
