import { M3_PER_FT3 } from "../units";

/** A cord is 4 by 4 by 8 feet of stacked wood (NIST Handbook 130, 2.4.1). */
const STACKED_FT3_PER_CORD = 128;
/** Of a stack with bark, in pieces of 1 m, this share is wood without bark (RVR, Bavarian forest owners' sheet). */
const SOLID_SHARE_OF_STACK = 0.7;
/** A hoppus foot measures the square of a quarter girth, 4/pi of it is in the circle. */
export const FT3_PER_HOPPUS_FT = 4 / Math.PI;

/** Cubic feet of solid wood in each unit that a volume can be asked in. */
const FT3_PER = {
  ft3: 1,
  m3: 1 / M3_PER_FT3,
  "hoppus ft": FT3_PER_HOPPUS_FT,
  cord: STACKED_FT3_PER_CORD * SOLID_SHARE_OF_STACK,
  cunit: 100,
};

export type CubicUnit = keyof typeof FT3_PER;

/** The names a unit is asked for by. */
export const CUBIC_UNITS: Readonly<Record<CubicUnit, readonly string[]>> = {
  ft3: ["cubic feet", "cubic foot", "cu ft", "ft^3", "ft³"],
  m3: ["cubic meters", "cubic metres", "cubic meter", "cubic metre", "m^3", "m³"],
  "hoppus ft": ["hoppus feet", "hoppus foot", "hft"],
  cord: ["cords"],
  cunit: ["cunits"],
};

/**
 * A solid volume in another unit. A cord is a stack: 128 cubic feet with its air, 70 % of it wood, so 89.6.
 *
 * @formula hoppus ft = ft3 * pi / 4; m3 = ft3 * 0.028316846592; cunit = ft3 / 100; cord = ft3 / (128 * 0.70)
 * @source NIST Handbook 130, 2.4.1: a cord is 128 stacked cubic feet
 * @source RVR solid content, 1 m pieces with bark: 0.70
 * @source woodland-management.co.uk, hoppus foot: 0.03605 m3
 */
export function inCubicUnit(ft3: number, unit: CubicUnit): number {
  return ft3 / FT3_PER[unit];
}
