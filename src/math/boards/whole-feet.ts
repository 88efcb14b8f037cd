import { nearest, nearestHalfDown } from "../rounding";

/** Which way an exact half foot goes. */
export type HalfGoes = "down" | "up" | "even";

/** Whether the feet end in an exact half, the one case the rules of tally differ on. */
export function isExactHalf(feet: number): boolean {
  return nearest(1, feet) !== nearestHalfDown(1, feet);
}

/** The nearest whole foot, an exact half going the given way. */
export function nearestWholeFoot(feet: number, halfGoes: HalfGoes): number {
  const [down, up] = [nearestHalfDown(1, feet), nearest(1, feet)];
  if (halfGoes === "even") return down % 2 === 0 ? down : up;
  return halfGoes === "up" ? up : down;
}
