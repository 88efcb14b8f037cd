import { mustBeAbove, mustBeAtLeast } from "../errors";

/**
 * Lumber recovery factor: board feet tallied from each cubic foot of log. Board feet are nominal ones, so that
 * it can pass 12 times the cubic recovery.
 *
 * @formula LRF = boardFeet / cubicFeet [board feet a cubic foot]
 * @source PNW-300, abstract
 * @range cubic feet above 0
 */
export function lumberRecovery({ boardFeet, cubicFeet }: { boardFeet: number; cubicFeet: number }): number {
  mustBeAtLeast(0, boardFeet, "board feet");
  mustBeAbove(0, cubicFeet, "cubic feet of log");
  return boardFeet / cubicFeet;
}
