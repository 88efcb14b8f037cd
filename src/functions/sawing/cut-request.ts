import {
  columns,
  inches,
  logLength,
  money,
  oneOf,
  optional,
  sameForAll,
  settings,
  type Declarations,
} from "../../cells/read";
import type { CutRequest } from "../../math/sawing/cut-plan/cut-request";
import { SETTING_READERS } from "./cut-settings";
import type { PlanSettings } from "./cut-settings.table";

/** What is asked of the cut plan, with the settings that were given. */
export interface PlanRequest extends CutRequest {
  settings: Partial<PlanSettings>;
}

const PATTERN_NAMES = {
  live: ["live sawing", "through and through", "through", "flat sawn", "plain"],
  slab: ["slabs", "live edge", "live edge slabs"],
  cant: ["cants"],
  quarter: ["quarters", "quartersawn", "quarter sawn"],
  timber: ["timbers", "beam", "mantel"],
};

const PRODUCT_COLUMNS = {
  thickness: inches,
  "green size": optional(inches),
  price: optional(money),
  "from width": optional(inches),
};

/** What CUTPLAN, CUTYIELD and the end view ask of a log. */
export const CUT_REQUEST: Declarations<PlanRequest> = {
  /** Small-end diameter inside bark, up and down as the log lies. */
  diameterIn: inches,
  /** Length of the log. */
  lengthFt: logLength,
  /** Thicknesses such as 4/4, one under the other; or columns thickness, green size, price a board foot, from width. */
  products: sameForAll(columns(PRODUCT_COLUMNS)),
  /** Width of the saw cut. */
  kerfIn: sameForAll(inches),
  /** live (through and through), slab (live edge), cant, quarter, or timber (boxed heart, of the setting timber). */
  pattern: optional(oneOf(PATTERN_NAMES)),
  /** Two columns of name and value, such as scale step and 1/16, in any order. */
  settings: settings(SETTING_READERS),
};
