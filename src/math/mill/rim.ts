import { mustBeAbove } from "../errors";
import { IN_PER_FT } from "../units";
import { bandCentrifugalPsi } from "./band";

/**
 * Speed of a rim, a band or a belt.
 *
 * @formula v = pi * D * n / 12; D = diameterIn; n = rpm
 * @source plain geometry
 * @checked 1 of 1 printed example
 */
export function rimSpeedFpm({ diameterIn, rpm }: { diameterIn: number; rpm: number }): number {
  return (Math.PI * diameterIn * rpm) / IN_PER_FT;
}

/**
 * Turns per minute for a wanted rim speed.
 *
 * @formula n = 12 * v / (pi * D); v = speedFpm; D = diameterIn
 * @source plain geometry
 */
export function rimRpm({ diameterIn, speedFpm }: { diameterIn: number; speedFpm: number }): number {
  mustBeAbove(0, diameterIn, "wheel diameter (in)");
  return (IN_PER_FT * speedFpm) / (Math.PI * diameterIn);
}

/**
 * Hoop stress that spinning puts in a thin steel ring: no spokes, no welds, no flaws.
 *
 * @formula s = bandCentrifugalPsi(speedFpm: v); v = rimSpeedFpm() [ft/min]
 * @source Singer, Problem 139
 */
export function rimStressPsi({ diameterIn, rpm }: { diameterIn: number; rpm: number }): number {
  return bandCentrifugalPsi({ speedFpm: rimSpeedFpm({ diameterIn, rpm }) });
}
