import { unitWords, VOLUMES } from "../units";

/** The units that the volume of a log can be asked in. */
export const CUBIC_UNITS = unitWords(VOLUMES, "ft3", "m3", "hoppus ft", "cord", "cunit");

export type CubicUnit = keyof typeof CUBIC_UNITS;

/**
 * A solid volume in another unit. A cord is a stack: 128 cubic feet with its air, 70 % of it wood, so 89.6.
 *
 * @formula V = ft3 if unit = "ft3", ft3 * 0.028316846592 if unit = "m3", ft3 * pi / 4 if unit = "hoppus ft", ft3 /
 *   100 if unit = "cunit", else ft3 / (128 * 0.7)
 * @source NIST Handbook 130, 2.4.1: a cord is 128 stacked cubic feet
 * @source RVR solid content, 1 m pieces with bark: 0.70
 * @source woodland-management.co.uk, hoppus foot: 0.03605 m3
 */
export function inCubicUnit(ft3: number, unit: CubicUnit): number {
  return ft3 / VOLUMES[unit].holds;
}
