import { inches, optional, poundsForce, psi } from "../../cells/read";
import { spread } from "../../cells/spread";
import { ramForceLbf, ramPressurePsi } from "../../math/mill/ram";

/**
 * Pressure at which a hydraulic ram gives a force.
 *
 * A ram on the slide of the idle wheel carries both strands: give it the pull that BANDSTRAIN answers.
 *
 * @customfunction RAMPRESSURE
 * @returns psi
 * @example =BOLE.RAMPRESSURE(2500, 2) gives 795.8
 * @example =BOLE.RAMPRESSURE(2500, 2, 1) gives 1061
 * @example =BOLE.RAMPRESSURE(2500, 2, 2) gives #N/A
 * @caution Keep to the ratings of ram, hose and pump. Oil under pressure cuts skin: bleed it off before opening a line.
 * @see RAMFORCE
 * @words hydraulic tension, cylinder pressure, gauge reading for blade tension
 * @picture ram
 */
export const RAMPRESSURE = spread(
  {
    /** Force wanted. */
    forceLbf: poundsForce,
    /** Bore of the ram. */
    boreIn: inches,
    /** Rod's diameter, where the oil works on the rod's side. Left out: the full bore pushes. */
    rodIn: optional(inches, 0),
  },
  ramPressurePsi,
);

/**
 * Force of a hydraulic ram at a pressure.
 *
 * Seals and slides take some of it. On a tension slide the ram's force is shared by the two strands of the band.
 *
 * @customfunction RAMFORCE
 * @returns Pounds of force
 * @example =BOLE.RAMFORCE(800, 3) gives 5654.9
 * @example =BOLE.RAMFORCE(800, 3, 1.875) gives 3445.9
 * @example =BOLE.RAMFORCE(800, 3, 3.5) gives #N/A
 * @caution Keep to the ratings of ram, hose and pump. Oil under pressure cuts skin: bleed it off before opening a line.
 * @see RAMPRESSURE
 * @words cylinder force, how hard does it push, log turner, loader
 * @picture ram
 */
export const RAMFORCE = spread(
  {
    /** Pressure of the oil. */
    pressurePsi: psi,
    /** Bore of the ram. */
    boreIn: inches,
    /** Rod's diameter, where the oil works on the rod's side. Left out: the full bore pushes. */
    rodIn: optional(inches, 0),
  },
  ramForceLbf,
);
