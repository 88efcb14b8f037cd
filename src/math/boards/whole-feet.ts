/** Which way an exact half foot goes. */
export type HalfGoes = "down" | "up" | "even";

/** A half is still a half after its sizes came through feet or metres, in square feet. */
const HAIR_FT = 1e-9;

/** Whether the feet end in an exact half, the one case the rules of tally differ on. */
export function isExactHalf(feet: number): boolean {
  return Math.abs(feet - Math.floor(feet) - 0.5) < HAIR_FT;
}

/** The nearest whole foot, an exact half going the given way. */
export function nearestWholeFoot(feet: number, halfGoes: HalfGoes): number {
  if (!isExactHalf(feet)) return Math.round(feet);
  const below = Math.floor(feet);
  if (halfGoes === "even") return below + (below % 2);
  return halfGoes === "up" ? below + 1 : below;
}

/** Whole feet in a length: a part of a foot is dropped. */
export function fullFeet(lengthFt: number): number {
  return Math.floor(lengthFt + HAIR_FT);
}
