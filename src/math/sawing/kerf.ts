import { mustBeBetween } from "../errors";

/**
 * No saw of a mill cuts wider (common practice, no source). A kerf of 3 was meant in millimetres, and one of 4/4 is the
 * thickness of a board.
 */
const WIDEST_KERF_IN = 0.75;

/** Refuses a kerf that is no saw's. */
export function mustBeKerf(kerfIn: number, what = "kerf"): void {
  mustBeBetween(0, WIDEST_KERF_IN, kerfIn, `${what} (in)`);
}
