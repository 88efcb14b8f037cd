import { mustBeAbove, mustBeAtLeast, mustBeBetween, NoAnswer } from "../../errors";
import type { PriceStep, Product } from "./cut-job";
import { inchesText, quartersText } from "../../inches-text";
import { nearestSteps } from "./scale-steps";

/** One row of the products, by the names of the sheet; inches. Rows of one thickness and green size make its price table. */
export interface ProductRow {
  thickness: number;
  "green size"?: number;
  price?: number;
  "from width"?: number;
}

/** What is added to the nominal thickness for drying and planing where no green size is given. */
const USUAL_OVERSIZE_IN = 1 / 8;

/** Thinner stock is tallied as an inch, as the trade does. */
const LEAST_TALLY_IN = 1;

/**
 * A green size lies within these shares of its thickness (common practice, no source): a 2 x 4 is sawn at 1 5/8, rough 4/4
 * seldom over 1 3/8. A number outside them is most likely a second thickness, typed beside the first one and not under it.
 */
const LEAST_GREEN_SHARE = 0.7;
const MOST_GREEN = { share: 1.2, andIn: 1 / 4 };

/** No mill sorts by so many products. More rows are most likely the whole column of another list. */
const MOST_ROWS = 200;

/** The products of a list: one for each thickness and green size. Without prices a board foot counts 1. */
export function productsOf(rows: readonly ProductRow[], stepIn: number, byValue: boolean): Product[] {
  if (rows.length === 0) throw new NoAnswer("products: wanted one thickness or more, got none");
  mustBeBetween(1, MOST_ROWS, rows.length, "rows of products");
  const sizes = new Map<string, ProductRow[]>();
  for (const row of rows) {
    const key = `${row.thickness} ${greenSizeIn(row)}`;
    sizes.set(key, [...(sizes.get(key) ?? []), row]);
  }
  return [...sizes.values()].map((ofOneSize) => productOf(ofOneSize, stepIn, byValue));
}

function productOf(rows: readonly ProductRow[], stepIn: number, byValue: boolean): Product {
  const row = rows[0]!;
  mustBeAbove(0, row.thickness, "thickness of a product (in)");
  mustBeGreenSize(row);
  const greenSteps = nearestSteps(greenSizeIn(row), stepIn);
  mustBeAtLeast(1, greenSteps, `green size of ${inchesText(row.thickness)} in, in scale steps`);
  return {
    nominalIn: row.thickness,
    tallyIn: Math.max(LEAST_TALLY_IN, row.thickness),
    greenSteps,
    greenIn: greenSteps * stepIn,
    prices: byValue ? pricesOf(rows) : [{ fromWidthIn: 0, perBoardFoot: 1 }],
  };
}

function mustBeGreenSize({ thickness, "green size": greenIn }: ProductRow): void {
  if (greenIn === undefined) return;
  mustBeBetween(
    LEAST_GREEN_SHARE * thickness,
    MOST_GREEN.share * thickness + MOST_GREEN.andIn,
    greenIn,
    `green size (in) beside the thickness ${quartersText(thickness)} (another thickness belongs in the row below)`,
  );
}

/** What the saw is to be set to: as given, or the thickness and the usual oversize. */
export function greenSizeIn(row: ProductRow): number {
  return row["green size"] ?? row.thickness + USUAL_OVERSIZE_IN;
}

function pricesOf(rows: readonly ProductRow[]): PriceStep[] {
  const prices = rows.map((row) => {
    if (row.price === undefined)
      throw new NoAnswer(`products: a plan for value needs a price for ${quartersText(row.thickness)}, got none`);
    return { fromWidthIn: row["from width"] ?? 0, perBoardFoot: row.price };
  });
  return prices.sort((a, b) => a.fromWidthIn - b.fromWidthIn);
}
