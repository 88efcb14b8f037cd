import { NEAR, SLACK } from "../../rounding";

/** Kerf, green size, width: the nearest whole step of the saw-head scale, halves up. */
export function nearestSteps(sizeIn: number, stepIn: number): number {
  return Math.floor(sizeIn / stepIn + 0.5 + NEAR);
}

/** Whole steps up to the first that is no lower: a blade that goes a hair under the bed clearance meets the dogs. */
export function stepsClearing(sizeIn: number, stepIn: number): number {
  return Math.ceil(sizeIn / stepIn - SLACK);
}

/** Whole steps that fit into a measured size. */
export function stepsWithin(sizeIn: number, stepIn: number): number {
  return Math.floor(sizeIn / stepIn + SLACK);
}
