import { mustBeBetween } from "../errors";

/** No saw of a mill cuts as wide (common practice, no source): a kerf of 3 is millimetres, or a board in its cell. */
const WIDEST_KERF_IN = 1;

/** Refuses a kerf that is no saw's. */
export function mustBeKerf(kerfIn: number, what = "kerf"): void {
  mustBeBetween(0, WIDEST_KERF_IN, kerfIn, `${what} (in)`);
}
