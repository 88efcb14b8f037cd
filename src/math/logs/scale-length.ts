import { mustBeBelow, mustBeBetween, NoAnswer, short } from "../errors";
import { IN_PER_FT } from "../units";
import { LONGEST_FT } from "./log";
import { downTo } from "../rounding";

/**
 * Length credited to a log: what is left after the trim, down to a whole step.
 *
 * Down to the last full foot: Wengert. By 2 ft with at least 4 in of trim: the Idaho contest rules. Logs cut 2 to 9 in
 * over-length with the excess disregarded: USDA Bulletin 711.
 *
 * @formula L = down((12 * lengthFt - (trimIn or 0)) / 12, stepFt or 1)
 * @source Wengert log scale, length to the last full foot
 * @source Idaho school forestry contest, scaling: 2-ft classes, at least 4 in of trim
 * @range trim shorter than the log; at least one step must be left
 */
export function scaleLengthFt({
  lengthFt,
  trimIn = 0,
  stepFt = 1,
}: {
  lengthFt: number;
  trimIn?: number;
  stepFt?: number;
}): number {
  mustBeBetween(0, LONGEST_FT, lengthFt, "length (ft)");
  mustBeBetween(1 / IN_PER_FT, LONGEST_FT, stepFt, "step (ft)");
  const lengthIn = lengthFt * IN_PER_FT;
  mustBeBelow(lengthIn, trimIn, "trim (in), shorter than the log");
  const credited = downTo(stepFt, (lengthIn - trimIn) / IN_PER_FT);
  if (credited <= 0)
    throw new NoAnswer(
      `length (ft): wanted at least one step of ${short(stepFt)} after ${short(trimIn)} in of trim, got ${short(lengthFt)}`,
    );
  return credited;
}
