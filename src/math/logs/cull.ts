import { mustBeAbove, mustBeAtLeast, mustBeBetween } from "../errors";
import { LONGEST_FT, mustBeScalable, THICKEST_IN, type Log } from "./log";
import { LOG_RULES, type LogRuleName } from "./log-rules";
import { logScaleBoardFeet } from "./log-scale";
import { hairOver, nearest } from "../rounding";

/** What an interior defect spoils around it, in width and in height. */
const SPOILED_IN = 1;
/** A board foot is a foot of 12 square inches; a fifth of the defect's wood would have been sawdust. */
const SQUARE_IN_PER_BF_FT = 12 / 0.8;
/** Sweep up to this much is not counted. */
const SWEEP_LET_GO_IN = 1;

const DEFAULT_RULE: LogRuleName = "International 1/4";

/**
 * Board feet taken off for an interior defect seen in the ends, by the squared-defect method.
 *
 * @formula BF = nearest((W + 1) * (H + 1) * L / 15); W = widthIn; H = heightIn; L = lengthFt
 * @source FSH 2409.11, chapter 20: the squared-defect method and its rounding
 * @source from memory: the divisor 15 (12 less a fifth for kerf) and the inch added each way
 * @range W and H above 0
 */
export function cullBoxBoardFeet({
  widthIn,
  heightIn,
  lengthFt,
}: {
  widthIn: number;
  heightIn: number;
  lengthFt: number;
}): number {
  mustBeBetween(0, THICKEST_IN, widthIn, "defect width (in)");
  mustBeBetween(0, THICKEST_IN, heightIn, "defect height (in)");
  mustBeAbove(0, lengthFt, "defect length (ft)");
  mustBeBetween(0, LONGEST_FT, lengthFt, "defect length (ft)");
  return nearest(1, ((widthIn + SPOILED_IN) * (heightIn + SPOILED_IN) * lengthFt) / SQUARE_IN_PER_BF_FT);
}

/**
 * Board feet taken off for sweep: the greatest departure of the log's line from a straight one.
 *
 * @formula BF = lost(grossBf: gross, share: (sweep - 1) / D);
 *   gross = logScaleBoardFeet(rounding: "none", rule: rule or "International 1/4") [board feet]; sweep = sweepIn;
 *   D = diameterIn
 * @source FSH 2409.11, chapter 20: the rounding
 * @source from memory: the fraction (sweep - 1) / D of the gross, Grosenbaugh 1952
 * @range sweep not over D + 1, where nothing is left
 */
export function cullSweepBoardFeet({
  sweepIn,
  rule = DEFAULT_RULE,
  ...log
}: Log & { sweepIn: number; rule?: LogRuleName }): number {
  const grossBf = logScaleBoardFeet({ ...log, rule });
  mustBeBetween(0, hairOver(log.diameterIn + SWEEP_LET_GO_IN), sweepIn, "sweep (in), not more than the log");
  return lost(grossBf, (sweepIn - SWEEP_LET_GO_IN) / log.diameterIn);
}

/**
 * Board feet taken off for a defect that a pie-cut holds, such as a fire scar, seam or cat face.
 *
 * @formula BF = lost(grossBf: gross, share: sharePercent / 100 * (l / L));
 *   gross = logScaleBoardFeet(rounding: "none", rule: rule or "International 1/4") [board feet]; l = defectLengthFt;
 *   L = lengthFt
 * @source FSH 2409.11, chapter 20: the pie-cut method and its rounding
 * @source from memory: the fraction angle / 360 times l / L of the gross, Grosenbaugh 1952
 * @range share up to 100 %, the defect not longer than the log
 */
export function cullSectorBoardFeet({
  sharePercent,
  defectLengthFt,
  rule = DEFAULT_RULE,
  ...log
}: Log & { sharePercent: number; defectLengthFt: number; rule?: LogRuleName }): number {
  const grossBf = logScaleBoardFeet({ ...log, rule });
  mustBeBetween(0, 100, sharePercent, "share (percent)");
  mustBeBetween(0, hairOver(log.lengthFt), defectLengthFt, "defect length (ft), not more than the log");
  return lost(grossBf, (sharePercent / 100) * (defectLengthFt / log.lengthFt));
}

/**
 * Board feet taken off for rot that runs round: with a sound core, rotten sapwood; without one, a rotten heart.
 *
 * Rotten sapwood: outer is the log's scaling diameter, core the diameter of the sound wood. Rotten heart: outer is the
 * diameter of the rot, taken off as a square.
 *
 * @formula BF = nearest(outer - core) if coreIn, else cullBoxBoardFeet(widthIn: outerIn, heightIn: outerIn);
 *   outer = logScaleBoardFeet(diameterIn: outerIn, rounding: "none", rule: rule or "International 1/4") [board feet];
 *   core = logScaleBoardFeet(diameterIn: coreIn, rounding: "none", rule: rule or "International 1/4") [board feet]
 * @source FSH 2409.11, chapter 20: the diameter-deduction and squared-defect methods and the rounding
 * @source from memory: the divisor 15 and the inch added each way
 * @range core not over outer, and within the rule's own limits
 */
export function cullRingBoardFeet({
  outerIn,
  lengthFt,
  coreIn,
  rule = DEFAULT_RULE,
}: {
  outerIn: number;
  lengthFt: number;
  coreIn?: number;
  rule?: LogRuleName;
}): number {
  if (coreIn === undefined) return cullBoxBoardFeet({ widthIn: outerIn, heightIn: outerIn, lengthFt });
  mustBeScalable({ diameterIn: outerIn, lengthFt }, { rule: "log", which: "outer", smallestIn: 0 });
  mustBeBetween(0, hairOver(outerIn), coreIn, "core diameter (in), not over the outer");
  mustBeScalable({ diameterIn: coreIn, lengthFt }, { ...LOG_RULES[rule].limits, which: "core" });
  const grossBf = logScaleBoardFeet({ diameterIn: outerIn, lengthFt, rule });
  return nearest(1, grossBf - logScaleBoardFeet({ diameterIn: coreIn, lengthFt, rule }));
}

/**
 * The share of the gross scale that is lost, in whole board feet: at least none, at most all, so that no net is under 0.
 *
 * @formula BF = min(grossBf, nearest(grossBf * max(0, share)))
 * @source plain arithmetic
 */
export function lost(grossBf: number, share: number): number {
  mustBeAtLeast(0, grossBf, "gross scale (bf)");
  return Math.min(grossBf, nearest(1, grossBf * Math.max(0, share)));
}
