import { mustBeAbove, NoAnswer } from "../errors";

interface Ram {
  boreIn: number;
  /** The rod's diameter where the oil works on the rod's side; left out where it works on the full bore. */
  rodIn?: number | undefined;
}

/**
 * Pressure at which a hydraulic ram gives a force, pushing, or pulling on the rod's side.
 *
 * @formula p = F / A; A = pistonAreaIn2() [in2]; F = forceLbf
 * @source plain arithmetic: pressure times area (of a circle or a ring: Machinery's Handbook 31, p 79)
 * @range a rod thinner than the bore
 * @checked the area, 1 of 1 printed example; no sound published example of a ram was found
 */
export function ramPressurePsi({ forceLbf, ...ram }: Ram & { forceLbf: number }): number {
  return forceLbf / pistonAreaIn2(ram);
}

/**
 * Force of a hydraulic ram at a pressure, pushing, or pulling on the rod's side.
 *
 * @formula F = p * A; A = pistonAreaIn2() [in2]; p = pressurePsi
 * @source plain arithmetic: pressure times area (of a circle or a ring: Machinery's Handbook 31, p 79)
 * @range a rod thinner than the bore
 * @checked the area, 1 of 1 printed example; no sound published example of a ram was found
 */
export function ramForceLbf({ pressurePsi, ...ram }: Ram & { pressurePsi: number }): number {
  return pressurePsi * pistonAreaIn2(ram);
}

/**
 * Square inches that the oil presses on, the rod's taken off where it works on the rod's side.
 *
 * @formula A = pi * (D - d) * (D + d) / 4; D = boreIn; d = rodIn or 0 [in]
 * @source plain geometry
 */
export function pistonAreaIn2({ boreIn, rodIn = 0 }: Ram): number {
  mustBeAbove(0, boreIn, "ram bore (in)");
  if (!(rodIn >= 0 && rodIn < boreIn))
    throw new NoAnswer(`ram rod (in): wanted 0 or more and less than the bore, ${boreIn}, got ${rodIn}`);
  return (Math.PI * (boreIn - rodIn) * (boreIn + rodIn)) / 4;
}
