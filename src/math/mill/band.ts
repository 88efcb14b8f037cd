import { mustBeAbove, mustBeBetween } from "../errors";
import { GRAVITY_FT_PER_S2, IN2_PER_FT2, SECONDS_PER_MIN } from "../units";
import { BLADE_MODULUS_PSI, STEEL_GROWTH_PER_F, STEEL_LB_PER_FT3 } from "./steel";

/**
 * Pull on the wheel that strains both strands of a band to a stress.
 *
 * @formula F = 2 * w * t * s; w = widthIn; t = thicknessIn; s = stressPsi
 * @source plain arithmetic: two strands of cross-section w t
 * @range a band up to 24 in wide and 1/4 in thick: none is larger (from memory)
 */
export function bandStrainLbf({ widthIn, thicknessIn, stressPsi }: Band & { stressPsi: number }): number {
  mustBeBand({ widthIn, thicknessIn });
  return 2 * widthIn * thicknessIn * stressPsi;
}

/**
 * Stress that a pull on the wheel makes in both strands of a band.
 *
 * @formula s = F / (2 * w * t); F = strainLbf; w = widthIn; t = thicknessIn
 * @source plain arithmetic: two strands of cross-section w t
 * @range a band up to 24 in wide and 1/4 in thick: none is larger (from memory)
 */
export function bandStressPsi({ strainLbf, widthIn, thicknessIn }: Band & { strainLbf: number }): number {
  mustBeBand({ widthIn, thicknessIn });
  return strainLbf / (2 * widthIn * thicknessIn);
}

/**
 * How much a gauge length of the band stretches under a stress.
 *
 * @formula dL = s * L / E; s = stressPsi; L = gaugeIn; E = modulusPsi or 30000000 [psi]
 * @source Philpot, Problem 5.1: Hooke's law
 * @source Fine Woodworking 2001: 6,000 psi for each 0.001 in on 5 in, which is E = 30,000,000 psi
 * @range a modulus from 1,000,000 to 100,000,000 psi; steel's is about 30,000,000
 * @checked 3 of 3 printed examples
 */
export function bandStretchIn({ stressPsi, gaugeIn, modulusPsi = BLADE_MODULUS_PSI }: BandStretch): number {
  mustBeModulus(modulusPsi);
  return (stressPsi * gaugeIn) / modulusPsi;
}

/**
 * Stress at the band's face from bending round the wheel.
 *
 * The short form E t / D is larger by one part in D / t. A wide thin band bends as a plate and may carry about a tenth
 * more (from memory).
 *
 * @formula s = E * t / (D + t); t = thicknessIn; D = wheelIn; E = modulusPsi or 30000000 [psi]
 * @source plain geometry: strain of the face is half the thickness over the radius of the middle of the band
 * @range a band up to a hundredth of the wheel, where it bends at 300,000 psi: no blade steel stands that (from memory);
 *   a modulus from 1,000,000 to 100,000,000 psi
 * @checked no published answer was seen; two from memory, by the short form
 */
export function bandBendingPsi({ thicknessIn, wheelIn, modulusPsi = BLADE_MODULUS_PSI }: BandBending): number {
  mustBeAbove(0, wheelIn, "wheel diameter (in)");
  mustBeModulus(modulusPsi);
  mustBeBetween(0, wheelIn / LEAST_WHEEL_IN_BANDS, thicknessIn, "band thickness (in), for this wheel");
  return (modulusPsi * thicknessIn) / (wheelIn + thicknessIn);
}

/**
 * Stress that a steel band needs to be turned round its wheel at its speed.
 *
 * By the momentum that the wheel turns round, the two strands pull twice this more than the axle is pushed out. A push
 * that stays the same therefore leaves the grip as it was and strains the band by this much more; wheels that stay at
 * their distance leave the strain as it was and lose this much of the grip.
 *
 * @formula s = 490 * v^2 / g / 144; v = speedFpm / 60 [ft/s]; g = 9.80665 / 0.3048 [ft/s2]
 * @source Singer, Problem 139
 * @checked 1 of 1 printed example
 */
export function bandCentrifugalPsi({ speedFpm }: { speedFpm: number }): number {
  const feetPerSecond = speedFpm / SECONDS_PER_MIN;
  return (STEEL_LB_PER_FT3 * feetPerSecond ** 2) / GRAVITY_FT_PER_S2 / IN2_PER_FT2;
}

/**
 * Stress that a warming band loses on wheels locked at their distance; a cooling one gains it, below zero.
 *
 * @formula s = E * a * dT; dT = degreesF; a = growthPerF or 0.0000065 [per °F]; E = modulusPsi or 30000000 [psi]
 * @source Singer, Problem 261
 * @range a growth from 0.000001 to 0.0001 a degree, a modulus from 1,000,000 to 100,000,000 psi
 * @checked 4 of 4 printed examples
 */
export function bandHeatingPsi({
  degreesF,
  growthPerF = STEEL_GROWTH_PER_F,
  modulusPsi = BLADE_MODULUS_PSI,
}: BandHeating): number {
  mustBeModulus(modulusPsi);
  mustBeBetween(1e-6, 1e-4, growthPerF, "growth of the steel per degree F");
  return modulusPsi * growthPerF * degreesF;
}

/**
 * A wheel smaller than so many thicknesses would bend the band further than steel springs back from. No mill has one: the
 * wheel's diameter and the band's thickness were most likely typed into each other's cells.
 */
const LEAST_WHEEL_IN_BANDS = 100;

/** A width of 32 or a thickness of 1.1 is millimetres without their name: the stress would come out far too low. */
const WIDEST_BAND_IN = 24;
const THICKEST_BAND_IN = 1 / 4;

function mustBeBand({ widthIn, thicknessIn }: Band): void {
  mustBeAbove(0, widthIn, "band width (in)");
  mustBeBetween(0, WIDEST_BAND_IN, widthIn, "band width (in)");
  mustBeAbove(0, thicknessIn, "band thickness (in)");
  mustBeBetween(0, THICKEST_BAND_IN, thicknessIn, "band thickness (in)");
}

/** Every metal's is between; 30 is in millions of psi, 200,000 in MPa. */
function mustBeModulus(modulusPsi: number): void {
  mustBeBetween(1e6, 1e8, modulusPsi, "modulus (psi)");
}

interface Band {
  widthIn: number;
  thicknessIn: number;
}

interface BandStretch {
  stressPsi: number;
  gaugeIn: number;
  modulusPsi?: number | undefined;
}

interface BandBending {
  thicknessIn: number;
  wheelIn: number;
  modulusPsi?: number | undefined;
}

interface BandHeating {
  degreesF: number;
  growthPerF?: number | undefined;
  modulusPsi?: number | undefined;
}
