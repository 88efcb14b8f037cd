/** The rule, the table or physics has no answer to what was asked. The worksheet shows it as #N/A. */
export class NoAnswer extends Error {
  override name = "NoAnswer";
}

/** Refuses a number under a source's lowest. `what` names the quantity and its unit: "Doyle diameter (in)". */
export function mustBeAtLeast(lowest: number, value: number, what: string): void {
  if (!(value >= lowest)) throw new NoAnswer(`${what}: wanted ${lowest} or more, got ${value}`);
}

/** Refuses a number outside a source's limits, and says both. */
export function mustBeBetween(lowest: number, highest: number, value: number, what: string): void {
  if (!(value >= lowest && value <= highest))
    throw new NoAnswer(`${what}: wanted ${lowest} to ${highest}, got ${value}`);
}

/** Refuses a number that is not above a limit which itself has no answer. */
export function mustBeAbove(limit: number, value: number, what: string): void {
  if (!(value > limit)) throw new NoAnswer(`${what}: wanted more than ${limit}, got ${value}`);
}

/** Refuses a number that is not under a limit which itself has no answer. */
export function mustBeBelow(limit: number, value: number, what: string): void {
  if (!(value < limit)) throw new NoAnswer(`${what}: wanted less than ${limit}, got ${value}`);
}
