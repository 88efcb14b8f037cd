import { mustBeAbove, mustBeAtLeast } from "../errors";

/**
 * Money that a blade costs for each square foot of face sawn, over its life; with the board feet that a square foot gives,
 * for each board foot.
 *
 * A blade is sawn with once more than it is sharpened.
 *
 * @formula cost = (price + sharpenings * sharpening) / (faceFt2 * (sharpenings + 1)) / (yieldBf or 1)
 * @source plain arithmetic
 * @range a face above 0 between sharpenings; price, sharpenings and their cost from 0
 */
export function bladeCost({ price, sharpenings, sharpening, faceFt2, yieldBf = 1 }: Blade): number {
  mustBeAtLeast(0, price, "price of the blade");
  mustBeAtLeast(0, sharpenings, "sharpenings");
  mustBeAtLeast(0, sharpening, "cost of a sharpening");
  mustBeAbove(0, faceFt2, "face between sharpenings (square feet)");
  mustBeAbove(0, yieldBf, "yield (board feet of a square foot)");
  return (price + sharpenings * sharpening) / (faceFt2 * (sharpenings + 1)) / yieldBf;
}

interface Blade {
  price: number;
  sharpenings: number;
  /** Money for one sharpening. */
  sharpening: number;
  /** Square feet of face sawn between two sharpenings. */
  faceFt2: number;
  /** Board feet that a square foot of face gives. */
  yieldBf?: number | undefined;
}
