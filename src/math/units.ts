/*
 * Conversion factors. Those marked exact are definitions:
 * inch and pound by the international yard and pound agreement of 1959 (NIST SP 811, appendix B),
 * the rest follow from them by arithmetic.
 */

/** exact */
export const IN_PER_FT = 12;
/** exact */
export const MM_PER_IN = 25.4;
/** exact */
export const CM_PER_IN = 2.54;
/** exact */
export const M_PER_IN = 0.0254;
/** exact */
export const M_PER_FT = 0.3048;
/** exact: a cubic foot is 1728 cubic inches */
export const IN3_PER_FT3 = 1728;
/** exact: a square foot is 144 square inches */
export const IN2_PER_FT2 = 144;
/** exact: a board foot is 144 cubic inches (NIST Handbook 130, 2.12) */
export const IN3_PER_BF = 144;
/** exact: from 1728 / 144 */
export const BF_PER_FT3 = 12;
/** exact: 0.3048 cubed */
export const M3_PER_FT3 = 0.028316846592;

/** exact */
export const KG_PER_LB = 0.45359237;
/** exact: a metric tonne is 1000 kg */
export const KG_PER_TONNE = 1000;
/** exact */
export const G_PER_KG = 1000;
/** exact: the avoirdupois ounce is a sixteenth of the pound */
export const OZ_PER_LB = 16;
/** exact: standard gravity 9.80665 m/s2 times the pound in kg */
export const N_PER_LBF = 4.4482216152605;
/** exact from the newton and the inch */
export const PA_PER_PSI = N_PER_LBF / M_PER_IN ** 2;

/** exact: a horsepower is 33,000 foot-pounds a minute (550 a second) */
export const FTLBF_PER_MIN_PER_HP = 33000;
/** exact from the horsepower, the foot and the pound-force */
export const W_PER_HP = 550 * M_PER_FT * N_PER_LBF;

/** exact: the horsepower that electric motors are rated in (NIST SP 811, appendix B, "horsepower (electric)") */
export const W_PER_ELECTRIC_HP = 746;
/** exact from the newton, the pound and the foot: standard gravity in ft/s2 */
export const GRAVITY_FT_PER_S2 = N_PER_LBF / KG_PER_LB / M_PER_FT;

/** exact */
export const SECONDS_PER_MIN = 60;

/** Pounds in a cubic foot of water at 4 degC, as the Wood Handbook uses it (FPL-GTR-282, Eq 4-14). */
export const WATER_LB_PER_FT3 = 62.4;

/** exact by definition of the two scales */
export function fahrenheitFromCelsius(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

/** exact by definition of the two scales */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}
