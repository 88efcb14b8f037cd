/** The rule, the table or physics has no answer to what was asked. The worksheet shows it as #N/A. */
export class NoAnswer extends Error {
  override name = "NoAnswer";
}

/** Refuses a number under a source's lowest. `what` names the quantity and its unit: "Doyle diameter (in)". */
export function mustBeAtLeast(lowest: number, value: number, what: string): void {
  if (!(value >= lowest)) throw new NoAnswer(`${what}: wanted ${short(lowest)} or more, got ${apart(value, lowest)}`);
}

/** Refuses a number outside a source's limits, and says both. */
export function mustBeBetween(lowest: number, highest: number, value: number, what: string): void {
  if (!(value >= lowest && value <= highest))
    throw new NoAnswer(
      `${what}: wanted ${short(lowest)} to ${short(highest)}, got ${apart(value, value < lowest ? lowest : highest)}`,
    );
}

/** Refuses a number that is not above a limit which itself has no answer. */
export function mustBeAbove(limit: number, value: number, what: string): void {
  if (!(value > limit)) throw new NoAnswer(`${what}: wanted more than ${short(limit)}, got ${apart(value, limit)}`);
}

/** Refuses a number that is not under a limit which itself has no answer. */
export function mustBeBelow(limit: number, value: number, what: string): void {
  if (!(value < limit)) throw new NoAnswer(`${what}: wanted less than ${short(limit)}, got ${apart(value, limit)}`);
}

/** A number as a message shows it: six digits say enough. */
export function short(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/** A refused number, with all its digits where six would show it as the limit it missed. */
export function apart(value: number, limit: number): string {
  return value !== limit && short(value) === short(limit) ? String(value) : short(value);
}
