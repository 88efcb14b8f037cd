import { quartersText } from "../../math/inches-text";
import type { Product } from "../../math/sawing/cut-plan/cut-job";

/** What a product is called: a thickness of the trade, or the timber, whose sides stand beside it. */
export function productText({ nominalIn, isTimber }: Product): string {
  return isTimber ? "timber" : quartersText(nominalIn);
}
