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
/** exact: a yard is 3 ft */
export const FT3_PER_YD3 = 27;
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
/** exact */
export const MIN_PER_H = 60;

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

/** A unit of a kind of amount: how many base units it holds, and what else people write for it, in small letters. */
export interface Unit {
  readonly holds: number;
  readonly also: readonly string[];
}

/** A cord is 4 by 4 by 8 feet of stacked wood (NIST Handbook 130, 2.4.1). */
export const STACKED_FT3_PER_CORD = 128;
/** Of a stack with bark, in pieces of 1 m, this share is wood without bark (RVR, Bavarian forest owners' sheet). */
export const SOLID_SHARE_OF_STACK = 0.7;
/** A hoppus foot measures the square of a quarter girth, 4/pi of it is in the circle. */
export const FT3_PER_HOPPUS_FT = 4 / Math.PI;
/** exact */
const N_PER_KN = 1000;
/** exact */
const PA_PER_MPA = 1e6;
const PA_PER_BAR = 1e5;
const PA_PER_KPA = 1000;
const PSI_PER_KSI = 1000;
/** exact */
const W_PER_KW = 1000;

/** Lengths, in inches. */
export const LENGTHS = {
  in: { holds: 1, also: ["inch", "inches"] },
  ft: { holds: IN_PER_FT, also: ["foot", "feet"] },
  mm: { holds: 1 / MM_PER_IN, also: ["millimeter", "millimeters", "millimetre", "millimetres"] },
  cm: { holds: 1 / CM_PER_IN, also: ["centimeter", "centimeters", "centimetre", "centimetres"] },
  m: { holds: 1 / M_PER_IN, also: ["meter", "meters", "metre", "metres"] },
} as const satisfies Record<string, Unit>;

/** Volumes of wood, in cubic feet. A cord is a stack with its air; a board foot is a twelfth of a cubic foot. */
export const VOLUMES = {
  ft3: { holds: 1, also: ["cubic feet", "cubic foot", "cu ft", "ft^3", "ft³"] },
  m3: {
    holds: 1 / M3_PER_FT3,
    also: ["cubic meters", "cubic metres", "cubic meter", "cubic metre", "cu m", "m^3", "m³"],
  },
  "hoppus ft": { holds: FT3_PER_HOPPUS_FT, also: ["hoppus feet", "hoppus foot", "hft"] },
  cord: { holds: STACKED_FT3_PER_CORD * SOLID_SHARE_OF_STACK, also: ["cords"] },
  cunit: { holds: 100, also: ["cunits"] },
  "board feet": { holds: 1 / BF_PER_FT3, also: ["board foot", "bf", "bd ft", "bdft", "fbm"] },
} as const satisfies Record<string, Unit>;

/** Weights, in pounds. */
export const WEIGHTS = {
  lb: { holds: 1, also: ["pound"] },
  oz: { holds: 1 / OZ_PER_LB, also: ["ounce"] },
  g: { holds: 1 / G_PER_KG / KG_PER_LB, also: ["gram"] },
  kg: { holds: 1 / KG_PER_LB, also: ["kilogram"] },
  t: { holds: KG_PER_TONNE / KG_PER_LB, also: ["tonne"] },
} as const satisfies Record<string, Unit>;

/** Speeds, in feet per minute. */
export const SPEEDS = {
  "ft/min": { holds: 1, also: ["fpm"] },
  "m/s": { holds: SECONDS_PER_MIN / (M_PER_IN * IN_PER_FT), also: [] },
  "m/min": { holds: 1 / (M_PER_IN * IN_PER_FT), also: [] },
  "ft/s": { holds: SECONDS_PER_MIN, also: [] },
} as const satisfies Record<string, Unit>;

/** Forces, in pounds of force. A kilogram weighs as many of them as it has pounds, both under standard gravity. */
export const FORCES = {
  lbf: { holds: 1, also: ["lb", "pound"] },
  N: { holds: 1 / N_PER_LBF, also: [] },
  kN: { holds: N_PER_KN / N_PER_LBF, also: [] },
  kgf: { holds: 1 / KG_PER_LB, also: ["kg", "kp", "kilogram"] },
} as const satisfies Record<string, Unit>;

/** Stresses and pressures, in pounds per square inch. */
export const STRESSES = {
  psi: { holds: 1, also: [] },
  ksi: { holds: PSI_PER_KSI, also: [] },
  MPa: { holds: PA_PER_MPA / PA_PER_PSI, also: [] },
  bar: { holds: PA_PER_BAR / PA_PER_PSI, also: [] },
  kPa: { holds: PA_PER_KPA / PA_PER_PSI, also: [] },
} as const satisfies Record<string, Unit>;

/** Powers, in horsepower. */
export const POWERS = {
  hp: { holds: 1, also: ["horsepower"] },
  kW: { holds: W_PER_KW / W_PER_HP, also: [] },
  W: { holds: 1 / W_PER_HP, also: [] },
} as const satisfies Record<string, Unit>;

/** Some units of a kind by name, each with its other spellings: the words of an argument that asks for a unit. */
export function unitWords<K extends string>(
  units: Readonly<Record<K, Unit>>,
  ...names: readonly K[]
): Readonly<Record<K, readonly string[]>> {
  return Object.fromEntries(names.map((name) => [name, units[name].also])) as Record<K, readonly string[]>;
}

/** What each spelling of a kind's units holds, in small letters. */
export function bySpelling(units: Readonly<Record<string, Unit>>): Readonly<Record<string, number>> {
  const entries = Object.entries(units);
  return Object.fromEntries(
    entries.flatMap(([name, { holds, also }]) => [name.toLowerCase(), ...also].map((spelling) => [spelling, holds])),
  );
}
