import { IN2_PER_FT2, BF_PER_FT3 } from "../units";
import { mustBeScalable, type Limits, type Log } from "./log";

/** Under an inch there is no square to saw. */
const SMALLEST_IN = 1;

export const TWO_THIRDS_LIMITS: Limits = { rule: "Two-thirds", smallestIn: SMALLEST_IN };
export const INSCRIBED_SQUARE_LIMITS: Limits = { rule: "Inscribed square", smallestIn: SMALLEST_IN };

/**
 * Board feet in a log by the two-thirds rule: a square timber two thirds of the diameter on a side.
 *
 * @formula BF = squareTimberBoardFeet(faceIn2: (2 * D / 3)^2); D = diameterIn
 * @source USFS Bulletin 36, two-thirds rule (Big Sandy cube)
 * @range D from 1 in
 */
export function twoThirdsBoardFeet({ diameterIn, lengthFt }: Log): number {
  mustBeScalable({ diameterIn, lengthFt }, TWO_THIRDS_LIMITS);
  return squareTimberBoardFeet(((2 * diameterIn) / 3) ** 2, lengthFt);
}

/**
 * Board feet in the largest square timber that a log holds, by its small end.
 *
 * @formula BF = squareTimberBoardFeet(faceIn2: D^2 / 2); D = diameterIn
 * @source USFS Bulletin 36, inscribed square rule
 * @source plain geometry: the square in a circle has half the square of the diameter
 * @range D from 1 in
 */
export function inscribedSquareBoardFeet({ diameterIn, lengthFt }: Log): number {
  mustBeScalable({ diameterIn, lengthFt }, INSCRIBED_SQUARE_LIMITS);
  return squareTimberBoardFeet(diameterIn ** 2 / 2, lengthFt);
}

/**
 * Board feet in a timber of a face of so many square inches.
 *
 * @formula BF = 12 * faceIn2 * lengthFt / 144
 * @source plain arithmetic
 */
export function squareTimberBoardFeet(faceIn2: number, lengthFt: number): number {
  return (BF_PER_FT3 * faceIn2 * lengthFt) / IN2_PER_FT2;
}
