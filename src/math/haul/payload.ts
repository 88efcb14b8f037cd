/**
 * Pounds a vehicle may still carry; below zero it is overloaded.
 *
 * @formula left = ratingLb - emptyLb - sum(weightsLb or [])
 * @source plain arithmetic
 */
export function payloadLeftLb({ ratingLb, emptyLb, weightsLb = [] }: Payload): number {
  return weightsLb.reduce((left, weight) => left - weight, ratingLb - emptyLb);
}

interface Payload {
  ratingLb: number;
  emptyLb: number;
  weightsLb?: readonly number[] | undefined;
}
