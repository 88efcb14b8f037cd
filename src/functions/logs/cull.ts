import { inches, logLength, mayBeZero, oneOf, optional, percent, zeroIsNone } from "../../cells/read";
import { spread } from "../../cells/spread";
import { cullBoxBoardFeet, cullRingBoardFeet, cullSectorBoardFeet, cullSweepBoardFeet } from "../../math/logs/cull";
import { LOG_RULE_NAMES } from "./log-rule-cards";

/**
 * Board feet taken off for an interior defect, by the squared-defect method.
 *
 * The defect is boxed with an inch added each way. The method and its rounding are the scaling handbook's; the divisor 15
 * and the inch are from memory.
 *
 * @customfunction CULLBOX
 * @returns Board feet, whole
 * @example =BOLE.CULLBOX(4, 5, 16) gives 32
 * @example =BOLE.CULLBOX(400, 5, 16) gives #N/A
 * @words defect, rot, deduction, cull, hole in a log
 * @see NETSCALE
 * @picture cull-box
 */
export const CULLBOX = spread(
  {
    /** Width of the defect in the end of the log. */
    widthIn: inches,
    /** Height of the defect. */
    heightIn: inches,
    /** Length of the defect along the log. */
    lengthFt: logLength,
  },
  cullBoxBoardFeet,
);

/**
 * Board feet taken off for sweep.
 *
 * The first inch is not counted. The fraction (sweep - 1) / diameter is from memory.
 *
 * @customfunction CULLSWEEP
 * @returns Board feet, whole
 * @example =BOLE.CULLSWEEP(3, 20, 16, "Doyle") gives 26
 * @example =BOLE.CULLSWEEP(1, 20, 16, "Doyle") gives 0
 * @example =BOLE.CULLSWEEP(30, 20, 16, "Doyle") gives #N/A
 * @words crooked log, bow, deduction, cull
 * @see NETSCALE
 * @picture sweep
 */
export const CULLSWEEP = spread(
  {
    /** Greatest distance between the log and a straight line along it. */
    sweepIn: mayBeZero(inches),
    /** Small-end diameter inside bark. */
    diameterIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Log rule of the gross scale. */
    rule: optional(oneOf(LOG_RULE_NAMES), "International 1/4"),
  },
  cullSweepBoardFeet,
);

/**
 * Board feet taken off for a defect that a pie-cut holds, such as a fire scar, seam or cat face.
 *
 * The pie-cut method and its rounding are the scaling handbook's; the fraction of the gross scale is from memory.
 *
 * @customfunction CULLSECTOR
 * @returns Board feet, whole
 * @example =BOLE.CULLSECTOR(20, 16, 25, 8, "Doyle") gives 32
 * @example =BOLE.CULLSECTOR(20, 16, 25, 18, "Doyle") gives #N/A
 * @words cat face, fire scar, seam, deduction, cull
 * @see NETSCALE
 * @picture cull-sector
 */
export const CULLSECTOR = spread(
  {
    /** Small-end diameter inside bark. */
    diameterIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Share of the circle that is cut out: 25 for a quarter. */
    sharePercent: percent,
    /** Length of the defect along the log. */
    defectLengthFt: logLength,
    /** Log rule of the gross scale. */
    rule: optional(oneOf(LOG_RULE_NAMES), "International 1/4"),
  },
  cullSectorBoardFeet,
);

/**
 * Board feet taken off for rotten sapwood (with a sound core) or for a rotten heart (without one).
 *
 * With a core, outer is the log's scaling diameter and what is lost is its scale less the core's. Without one, outer is the
 * diameter of the rot, and it is boxed as CULLBOX does.
 *
 * @customfunction CULLRING
 * @returns Board feet, whole
 * @example =BOLE.CULLRING(20, 16, 16, "Doyle") gives 112
 * @example =BOLE.CULLRING(5, 16) gives 38
 * @example =BOLE.CULLRING(16, 16, 20) gives #N/A
 * @words rotten heart, hollow log, rotten sap, deduction, cull
 * @see NETSCALE
 * @picture cull-ring
 */
export const CULLRING = spread(
  {
    /** Outer diameter of the rot: of the log when the sapwood is rotten. */
    outerIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Diameter of the sound core inside. Leave it out for a rotten heart. */
    coreIn: optional(zeroIsNone(inches)),
    /** Log rule, where a core is given. */
    rule: optional(oneOf(LOG_RULE_NAMES), "International 1/4"),
  },
  cullRingBoardFeet,
);
