import { mustBeAtLeast, mustBeBelow } from "../errors";

const PERCENT = 100;

/**
 * What is left of a whole after a percentage is taken from it; nothing must be left over, so 100 % is refused.
 *
 * @formula left = (100 - takenPercent) / 100
 * @source plain arithmetic
 */
export function shareLeft(takenPercent: number, what: string): number {
  mustBeAtLeast(0, takenPercent, what);
  mustBeBelow(PERCENT, takenPercent, what);
  return (PERCENT - takenPercent) / PERCENT;
}
