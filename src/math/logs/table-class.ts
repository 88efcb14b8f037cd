import type { Log } from "./log";
import { downTo, nearestHalfDown } from "../rounding";

/** Printed log tables go by 2 feet. */
export const LENGTH_CLASS_FT = 2;

/**
 * The sizes that a printed log table is entered with: whole inches, and even feet.
 *
 * Authorities differ. Nearest inch: Georgia, Vermont, Wengert. An exact half is dropped by the Idaho contest rules and
 * shared out among the logs by Georgia and Wengert; Vermont does not say. One log cannot be shared out, so the half is
 * dropped. Who always cuts down to the whole inch (a Montana lecture) does so first, by SCALEDIAMETER.
 *
 * @formula diameterIn = halfdown(diameterIn) [in]; lengthFt = down(lengthFt, 2) [ft]
 * @source Georgia OCGA 2-14-80, paragraph (e)
 * @source Idaho school forestry contest, scaling: the half is dropped, lengths by 2 ft
 */
export function tableClass({ diameterIn, lengthFt }: Log): Log {
  return { diameterIn: wholeInches(diameterIn), lengthFt: downTo(LENGTH_CLASS_FT, lengthFt) };
}

/**
 * The nearest whole inch, an exact half dropped.
 *
 * @formula D = halfdown(diameterIn)
 * @source plain arithmetic: see tableClass for whose rounding it is
 */
export function wholeInches(diameterIn: number): number {
  return nearestHalfDown(1, diameterIn);
}
