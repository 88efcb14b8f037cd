import { mustBeBetween } from "../errors";

/** No saw of a mill cuts as wide (common practice, no source): a kerf of 3 is millimetres, one of 4/4 a board's size. */
const WIDEST_KERF_IN = 0.75;

/** Refuses a kerf that is no saw's. */
export function mustBeKerf(kerfIn: number, what = "kerf"): void {
  mustBeBetween(0, WIDEST_KERF_IN, kerfIn, `${what} (in)`);
}
