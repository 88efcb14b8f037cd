import { bandCentrifugalPsi } from "./band";
import { rimSpeedFpm } from "./pulleys";

/**
 * Hoop stress that spinning puts in a thin steel ring: no spokes, no welds, no flaws.
 *
 * @formula s = w v^2 / g, w = 490 lb/ft3, v = pi D n / 720 in feet per second, s in lb/ft2
 * @source Singer, Problem 139
 */
export function rimStressPsi({ diameterIn, rpm }: { diameterIn: number; rpm: number }): number {
  return bandCentrifugalPsi({ speedFpm: rimSpeedFpm({ diameterIn, rpm }) });
}
