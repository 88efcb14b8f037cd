import { feet, inches, mayBeZero, oneOf, optional, percent } from "../../cells/read";
import { spread } from "../../cells/spread";
import { cullBoxBoardFeet, cullRingBoardFeet, cullSectorBoardFeet, cullSweepBoardFeet } from "../../math/logs/cull";
import { LOG_RULES } from "../../math/logs/log-rules";

/**
 * Board feet taken off for an interior defect, by the squared-defect method.
 *
 * The defect is boxed with an inch added each way. The method and its rounding are the scaling handbook's; the divisor 15
 * and the inch are from memory.
 *
 * @customfunction CULLBOX
 * @param width Width of the defect in the end of the log. A bare number is inches.
 * @param height Height of the defect. A bare number is inches.
 * @param length Length of the defect along the log. A bare number is feet.
 * @returns Board feet, whole
 * @example =BOLE.CULLBOX(4, 5, 16) gives 32
 * @example =BOLE.CULLBOX(400, 5, 16) gives #N/A
 * @words defect, rot, deduction, cull, hole in a log
 * @see NETSCALE
 * @picture cull-box
 */
export function CULLBOX(width: unknown[][], height: unknown[][], length: unknown[][]): unknown[][] {
  return spread(
    { widthIn: inches(width, "width"), heightIn: inches(height, "height"), lengthFt: feet(length, "length") },
    cullBoxBoardFeet,
  );
}

/**
 * Board feet taken off for sweep.
 *
 * The first inch is not counted. The fraction (sweep - 1) / diameter is from memory.
 *
 * @customfunction CULLSWEEP
 * @param sweep Greatest distance between the log and a straight line along it. A bare number is inches.
 * @param diameter Small-end diameter inside bark. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [rule] Log rule of the gross scale; International 1/4 when left out.
 * @returns Board feet, whole
 * @example =BOLE.CULLSWEEP(3, 20, 16, "Doyle") gives 26
 * @example =BOLE.CULLSWEEP(1, 20, 16, "Doyle") gives 0
 * @example =BOLE.CULLSWEEP(30, 20, 16, "Doyle") gives #N/A
 * @words crooked log, bow, deduction, cull
 * @see NETSCALE
 * @picture sweep
 */
export function CULLSWEEP(
  sweep: unknown[][],
  diameter: unknown[][],
  length: unknown[][],
  rule?: unknown[][],
): unknown[][] {
  return spread(
    {
      sweepIn: mayBeZero(inches(sweep, "sweep")),
      diameterIn: inches(diameter, "diameter"),
      lengthFt: feet(length, "length"),
      rule: optional(oneOf(LOG_RULES, rule, "rule")),
    },
    cullSweepBoardFeet,
  );
}

/**
 * Board feet taken off for a defect that a pie-cut holds, such as a fire scar, seam or cat face.
 *
 * The pie-cut method and its rounding are the scaling handbook's; the fraction of the gross scale is from memory.
 *
 * @customfunction CULLSECTOR
 * @param diameter Small-end diameter inside bark. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param share Percent of the circle that is cut out: 25, 25% or 0.25 for a quarter.
 * @param defectlength Length of the defect along the log. A bare number is feet.
 * @param [rule] Log rule of the gross scale; International 1/4 when left out.
 * @returns Board feet, whole
 * @example =BOLE.CULLSECTOR(20, 16, 25, 8, "Doyle") gives 32
 * @example =BOLE.CULLSECTOR(20, 16, 25, 18, "Doyle") gives #N/A
 * @words cat face, fire scar, seam, deduction, cull
 * @see NETSCALE
 * @picture cull-sector
 */
export function CULLSECTOR(
  diameter: unknown[][],
  length: unknown[][],
  share: unknown[][],
  defectlength: unknown[][],
  rule?: unknown[][],
): unknown[][] {
  return spread(
    {
      diameterIn: inches(diameter, "diameter"),
      lengthFt: feet(length, "length"),
      sharePercent: percent(share, "share"),
      defectLengthFt: feet(defectlength, "defectlength"),
      rule: optional(oneOf(LOG_RULES, rule, "rule")),
    },
    cullSectorBoardFeet,
  );
}

/**
 * Board feet taken off for rotten sapwood (with a sound core) or for a rotten heart (without one).
 *
 * With a core, outer is the log's scaling diameter and what is lost is its scale less the core's. Without one, outer is the
 * diameter of the rot, and it is boxed as CULLBOX does.
 *
 * @customfunction CULLRING
 * @param outer Outer diameter of the rot: of the log when the sapwood is rotten. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [core] Diameter of the sound core inside. A bare number is inches. Leave it out for a rotten heart.
 * @param [rule] Log rule, where a core is given; International 1/4 when left out.
 * @returns Board feet, whole
 * @example =BOLE.CULLRING(20, 16, 16, "Doyle") gives 112
 * @example =BOLE.CULLRING(5, 16) gives 38
 * @example =BOLE.CULLRING(16, 16, 20) gives #N/A
 * @words rotten heart, hollow log, rotten sap, deduction, cull
 * @see NETSCALE
 * @picture cull-ring
 */
export function CULLRING(outer: unknown[][], length: unknown[][], core?: unknown[][], rule?: unknown[][]): unknown[][] {
  return spread(
    {
      outerIn: inches(outer, "outer"),
      lengthFt: feet(length, "length"),
      coreIn: optional(inches(core, "core")),
      rule: optional(oneOf(LOG_RULES, rule, "rule")),
    },
    cullRingBoardFeet,
  );
}
