import { NoAnswer } from "../errors";

/** Money for an amount of work at a price for each. Work without a price would be given away in silence: it is refused. */
export function priced(amount: number, priceForEach: number, what: string): number {
  if (amount !== 0 && priceForEach === 0)
    throw new NoAnswer(`${what}: wanted a price for each, got ${amount} and no price`);
  return amount * priceForEach;
}
