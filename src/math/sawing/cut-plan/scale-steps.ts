import { NEAR, SLACK } from "../../rounding";

/** Kerf, green size, width: the nearest whole step of the saw-head scale, halves up. */
export function nearestSteps(sizeIn: number, stepIn: number): number {
  return Math.floor(sizeIn / stepIn + 0.5 + NEAR);
}

/** The least number of whole steps that is no lower: a blade just under the bed clearance would meet the dogs. */
export function stepsClearing(sizeIn: number, stepIn: number): number {
  return Math.ceil(sizeIn / stepIn - SLACK);
}

/** Whole steps that fit into a measured size. */
export function stepsWithin(sizeIn: number, stepIn: number): number {
  return Math.floor(sizeIn / stepIn + SLACK);
}
