import { feetPerMinute, inches, mayBeNegative, named, number, optional, poundsForce, psi } from "../../cells/read";
import { spread } from "../../cells/spread";
import {
  bandBendingPsi,
  bandCentrifugalPsi,
  bandHeatingPsi,
  bandStrainLbf,
  bandStressPsi,
  bandStretchIn,
} from "../../math/mill/band";
import { BLADE_MODULUS_PSI, STEEL_GROWTH_PER_F } from "../../math/mill/steel";

/**
 * Pull on the wheel that strains a band to a stress.
 *
 * Both strands pull. Use the width behind the gullets, where the stress is. No published figure for a sawmill band was
 * found: the stress to set comes from the blade's maker. OSHA (29 CFR 1910.213(i)(2), seen in a copy) asks that a band
 * saw shows its tension.
 *
 * @customfunction BANDSTRAIN
 * @returns Pounds of force
 * @example =BOLE.BANDSTRAIN(1.25, 0.045, 15000) gives 1687.5
 * @example =BOLE.BANDSTRAIN(1.25, "thin", 15000) gives #VALUE!
 * @caution The makers of blade and mill limit the strain: never above. A band that lets go kills; stand clear, guards shut.
 * @see BANDSTRESS
 * @words blade tension, how tight, how much tension, strain the blade, tension wheel, pull on the wheel
 * @picture strain
 */
export const BANDSTRAIN = spread(
  {
    /** Width of the band behind the gullets. */
    widthIn: inches,
    /** Thickness of the band. */
    thicknessIn: inches,
    /** Stress the blade's maker asks for. */
    stressPsi: psi,
  },
  bandStrainLbf,
);

/**
 * Stress in a band from the pull on its wheel.
 *
 * Pull alone: bending round the wheel, speed and warming add theirs. With the full width instead of the width behind
 * the gullets the answer is too low. A pull of 2,500 lbf on a 1 1/2 in band is common practice, no source.
 *
 * @customfunction BANDSTRESS
 * @returns psi
 * @example =BOLE.BANDSTRESS(2500, 1.5, 0.045) gives 18519
 * @example =BOLE.BANDSTRESS(2500, 1.5, -0.045) gives #VALUE!
 * @caution The makers of blade and mill limit the strain: never above. A band that lets go kills; stand clear, guards shut.
 * @see BANDSTRAIN
 * @words blade tension, psi in the blade, is it too tight, tension stress
 * @picture strain
 */
export const BANDSTRESS = spread(
  {
    /** Pull on the wheel, both strands together. */
    strainLbf: poundsForce,
    /** Width of the band behind the gullets. */
    widthIn: inches,
    /** Thickness of the band. */
    thicknessIn: inches,
  },
  bandStressPsi,
);

/**
 * How much a gauge length of band stretches under a stress.
 *
 * Clamp a gauge to the slack band, strain it and read the growth: 0.001 in on 5 in is 6,000 psi.
 *
 * @customfunction BANDSTRETCH
 * @returns Inches
 * @example =BOLE.BANDSTRETCH(6000, 5) gives 0.001
 * @example =BOLE.BANDSTRETCH(6000, "5,0") gives #VALUE!
 * @caution Gauge the band standing still and locked out. The makers of blade and mill limit the strain: never above.
 * @see BANDSTRAIN
 * @words tension gauge, strain gauge, dial indicator on the blade
 * @picture stretch
 */
export const BANDSTRETCH = spread(
  {
    /** Stress in the band. */
    stressPsi: psi,
    /** Length the gauge is clamped on. */
    gaugeIn: inches,
    /** Stiffness of the steel. */
    modulusPsi: optional(psi, BLADE_MODULUS_PSI),
  },
  bandStretchIn,
);

/**
 * Stress at the face of a band from bending round its wheel.
 *
 * It comes and goes twice in each turn of the band, which is what cracks it. The rule of a wheel of 1,000
 * thicknesses of band (from memory) makes it 30,000 psi. A wide thin band may carry a tenth more (from memory). A crack over a
 * tenth of the width takes a band out of service (29 CFR 1910.265(e)(2)(i), seen in a copy).
 *
 * @customfunction BANDBENDING
 * @returns psi
 * @example =BOLE.BANDBENDING(0.042, 36) gives 34959
 * @example =BOLE.BANDBENDING(0.042, "large") gives #VALUE!
 * @caution Blade and wheel makers say which thickness goes on which wheel. A cracked band comes off at once.
 * @see BANDSTRESS
 * @words blade cracking, blade breaks, thick blade small wheel
 * @picture bending
 */
export const BANDBENDING = spread(
  {
    /** Thickness of the band. */
    thicknessIn: inches,
    /** Diameter of the smaller wheel. */
    wheelIn: inches,
    /** Stiffness of the steel. */
    modulusPsi: optional(psi, BLADE_MODULUS_PSI),
  },
  bandBendingPsi,
);

/**
 * Stress that its own speed puts in a steel band.
 *
 * On wheels pushed apart by a weight or a ram that follows, this stress comes on top of that of the pull, and the grip
 * on the wheel stays. On wheels locked at their distance by a screw the stress stays, and this much of it no longer
 * grips the wheel.
 *
 * @customfunction BANDCENTRIFUGAL
 * @returns psi
 * @example =BOLE.BANDCENTRIFUGAL(5000) gives 734
 * @example =BOLE.BANDCENTRIFUGAL("fast") gives #VALUE!
 * @caution No rule sets a safe band speed: the makers of the wheel and of the blade do. Never run above either.
 * @see RIMSTRESS
 * @words blade flies off, band loosens at speed
 */
export const BANDCENTRIFUGAL = spread(
  {
    /** Speed of the band. */
    speedFpm: feetPerMinute,
  },
  bandCentrifugalPsi,
);

/**
 * Stress that a band loses as it warms on locked wheels.
 *
 * About 195 psi for each degree. A weight or a ram that follows the band loses nothing. For a band that cools, give
 * minus degrees: the answer is then minus, which is stress gained. That is what a band left strained overnight does.
 *
 * @customfunction BANDHEATING
 * @returns psi
 * @example =BOLE.BANDHEATING(70) gives 13650
 * @example =BOLE.BANDHEATING(-70) gives -13650
 * @example =BOLE.BANDHEATING("20 C") gives #VALUE!
 * @caution A band strained hot and left to cool pulls harder on wheels and frame: slack it off when the day's work ends.
 * @see BANDSTRESS
 * @words blade gets hot, tension drops while sawing, release tension overnight
 */
export const BANDHEATING = spread(
  {
    /** Degrees Fahrenheit by which the band warms; minus when it cools. A Celsius degree is 1.8 of them. */
    degreesF: mayBeNegative(number),
    /** Growth of the steel per degree Fahrenheit. */
    growthPerF: named("growth", optional(number, STEEL_GROWTH_PER_F)),
    /** Stiffness of the steel. */
    modulusPsi: optional(psi, BLADE_MODULUS_PSI),
  },
  bandHeatingPsi,
);
