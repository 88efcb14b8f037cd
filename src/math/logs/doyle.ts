import { mustBeAtLeast } from "../errors";

/** What Doyle takes off the diameter for slabs and edgings, in inches. */
const SLAB_ALLOWANCE_IN = 4;

/**
 * Board feet in a log by the Doyle rule.
 *
 * @formula BF = ((D - 4) / 4)^2 * L, D in inches, L in feet
 * @source Louisiana RS 3:4641
 * @range D from 4 in, where the rule gives 0; below that the square would rise again
 */
export function doyleBoardFeet({ diameterIn, lengthFt }: { diameterIn: number; lengthFt: number }): number {
  mustBeAtLeast(SLAB_ALLOWANCE_IN, diameterIn, "Doyle diameter (in)");
  return ((diameterIn - SLAB_ALLOWANCE_IN) / 4) ** 2 * lengthFt;
}
