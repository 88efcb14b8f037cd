import { mustBeAbove, mustBeAtLeast, mustBeBetween } from "../errors";
import { UNDERSIZE_FACTORS } from "./undersize-factor.table";

/**
 * Green size to set the saw to, so that all but the allowed share of boards finish at size.
 * The critical size is what a board needs for planing and shrinkage; sawing variation comes on top of it.
 *
 * @formula target = critical + Z * (variationIn or 0);
 *   critical = (finishedIn + (planingIn or 0)) / (1 - (shrinkagePercent or 0) / 100) [in];
 *   Z = undersizeFactor(percent: undersizePercent or 0)
 * @source EM 8731, p. 12 (finished + planing, + variation) and p. 16, Table 2 (Z, in a straight line between its rows)
 * @source from memory, dividing by 1 - shrinkage: the sheet adds the shrinkage in inches
 * @checked 9 of 9 printed factors, and the printed critical size (1.620)
 * @range shrinkage 0 to 20 %, undersize 0 to 15 %
 */
export function targetSizeIn({
  finishedIn,
  planingIn = 0,
  shrinkagePercent = 0,
  variationIn = 0,
  undersizePercent = 0,
}: {
  finishedIn: number;
  planingIn?: number;
  shrinkagePercent?: number;
  variationIn?: number;
  undersizePercent?: number;
}): number {
  mustBeAbove(0, finishedIn, "finished size (in)");
  mustBeAtLeast(0, planingIn, "planing (in)");
  mustBeBetween(0, MOST_SHRINKAGE_PERCENT, shrinkagePercent, "shrinkage (%)");
  mustBeAtLeast(0, variationIn, "sawing variation (in)");
  const criticalIn = (finishedIn + planingIn) / (1 - shrinkagePercent / 100);
  return criticalIn + undersizeFactor(undersizePercent) * variationIn;
}

/** No wood shrinks by more across the grain (from memory); a bare 0.5 is a half, and half a percent is written 0.5%. */
const MOST_SHRINKAGE_PERCENT = 20;

/** What the factor for none really leaves. */
const NONE_PERCENT = 0.1;

/**
 * Z for a share of undersize boards. A straight line between the table's rows errs on the thick side.
 *
 * @formula by table: Z of the row for the percent, in a straight line between rows
 * @source EM 8731, p. 16, Table 2
 */
export function undersizeFactor(percent: number): number {
  mustBeBetween(0, 15, percent, "undersize allowed (%)");
  if (percent <= NONE_PERCENT) return UNDERSIZE_FACTORS[0]![1];
  const above = UNDERSIZE_FACTORS.findIndex(([undersize]) => undersize >= percent);
  const [highPercent, highZ] = UNDERSIZE_FACTORS[above]!;
  const [rowPercent, lowZ] = UNDERSIZE_FACTORS[above - 1]!;
  const lowPercent = Math.max(NONE_PERCENT, rowPercent);
  return lowZ + ((highZ - lowZ) * (percent - lowPercent)) / (highPercent - lowPercent);
}
