/** The least number of trips that any plan needs: by weight, and by the logs too heavy to go together. */
export function atLeastTrips(weights: readonly number[], payloadLb: number): number {
  const limits = [...new Set(weights.filter((weight) => weight <= payloadLb / 2)), 0];
  return Math.max(1, ...limits.map((limit) => withLimit(weights, payloadLb, limit)));
}

/**
 * Logs over half the payload go one to a trip. The lighter ones, down to the limit, may fill up only those trips whose log
 * leaves room for the limit; what they weigh beyond that room needs trips of its own.
 *
 * @formula by search: n1 + n2 + the rest of the logs from limit to half that the n2 trips have no room for, over the
 *   payload, up to a whole trip
 * @source plain arithmetic: the bound of Martello and Toth for bin packing, from memory
 */
function withLimit(weights: readonly number[], payloadLb: number, limit: number): number {
  let alone = 0;
  let sharing = 0;
  let roomLb = 0;
  let smallLb = 0;
  for (const weight of weights) {
    if (weight > payloadLb - limit) alone++;
    else if (weight > payloadLb / 2) {
      sharing++;
      roomLb += payloadLb - weight;
    } else if (weight >= limit) smallLb += weight;
  }
  const beyond = Math.max(0, Math.ceil((smallLb - roomLb) / payloadLb - 1e-9));
  return alone + sharing + beyond;
}
