import { inches, optional, poundsForce, psi } from "../../cells/read";
import { spread } from "../../cells/spread";
import { ramForceLbf, ramPressurePsi } from "../../math/mill/ram";

/**
 * Pressure at which a hydraulic ram gives a force.
 *
 * A ram on the slide of the idle wheel carries both strands: give it the pull that BANDSTRAIN answers.
 *
 * @customfunction RAMPRESSURE
 * @param force Force wanted. A bare number is pounds; 11 kN works too.
 * @param bore Bore of the ram. A bare number is inches; 40 mm works too.
 * @param [rod] Rod's diameter, where the oil works on the rod's side. Left out: the full bore pushes.
 * @returns psi
 * @example =BOLE.RAMPRESSURE(2500, 2) gives 795.8
 * @example =BOLE.RAMPRESSURE(2500, 2, 1) gives 1061
 * @example =BOLE.RAMPRESSURE(2500, 2, 2) gives #N/A
 * @caution Keep to the ratings of ram, hose and pump. Oil under pressure cuts skin: bleed it off before opening a line.
 * @see RAMFORCE
 * @words hydraulic tension, cylinder pressure, gauge reading for blade tension
 * @picture ram
 */
export function RAMPRESSURE(force: unknown[][], bore: unknown[][], rod?: unknown[][]): unknown[][] {
  return spread(
    {
      forceLbf: poundsForce(force, "force"),
      boreIn: inches(bore, "bore"),
      rodIn: optional(inches(rod, "rod")),
    },
    ramPressurePsi,
  );
}

/**
 * Force of a hydraulic ram at a pressure.
 *
 * Seals and slides take some of it. On a tension slide the ram's force is shared by the two strands of the band.
 *
 * @customfunction RAMFORCE
 * @param pressure Pressure of the oil. A bare number is psi; 70 bar works too.
 * @param bore Bore of the ram. A bare number is inches; 40 mm works too.
 * @param [rod] Rod's diameter, where the oil works on the rod's side. Left out: the full bore pushes.
 * @returns Pounds of force
 * @example =BOLE.RAMFORCE(800, 3) gives 5654.9
 * @example =BOLE.RAMFORCE(800, 3, 1.875) gives 3445.9
 * @example =BOLE.RAMFORCE(800, 3, 3.5) gives #N/A
 * @caution Keep to the ratings of ram, hose and pump. Oil under pressure cuts skin: bleed it off before opening a line.
 * @see RAMPRESSURE
 * @words cylinder force, how hard does it push, log turner, loader
 * @picture ram
 */
export function RAMFORCE(pressure: unknown[][], bore: unknown[][], rod?: unknown[][]): unknown[][] {
  return spread(
    {
      pressurePsi: psi(pressure, "pressure"),
      boreIn: inches(bore, "bore"),
      rodIn: optional(inches(rod, "rod")),
    },
    ramForceLbf,
  );
}
