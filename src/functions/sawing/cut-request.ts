import {
  columns,
  degrees,
  feet,
  inches,
  inchesList,
  logLength,
  mayBeZero,
  money,
  number,
  oneOf,
  optional,
  sameForAll,
  settings,
  yesNo,
  type Declarations,
} from "../../cells/read";
import type { CutRequest } from "../../math/sawing/cut-plan/cut-request";

const PATTERN_NAMES = {
  live: ["live sawing", "through and through", "through", "flat sawn", "plain"],
  slab: ["slabs", "live edge", "live edge slabs"],
  cant: ["cants"],
  quarter: ["quarters", "quartersawn", "quarter sawn"],
};

const PRODUCT_COLUMNS = {
  thickness: inches,
  "green size": optional(inches),
  price: optional(money),
  "from width": optional(inches),
};

/** A setting that is blank takes the plan's default; a blank taper is a log without taper. */
const CUT_SETTINGS = {
  "small end across": inches,
  taper: mayBeZero(inches),
  "log lies": oneOf({ split: ["shimmed", "pith level"], flat: ["full", "full taper", "on the bed"] }),
  sweep: inches,
  crown: oneOf({ up: [], down: [], side: ["sideways"] }),
  "rip kerf": inches,
  "scale step": inches,
  objective: oneOf({ "board feet": ["bf", "feet"], value: ["money"] }),
  "pass cost": number,
  "minimum width": inches,
  "maximum width": inches,
  "width step": inches,
  widths: inchesList,
  "width allowance": inches,
  "minimum length": feet,
  "length step": feet,
  trim: inches,
  wane: mayBeZero(number),
  rip: yesNo,
  "bed clearance": inches,
  "opening face": inches,
  "guide opening": inches,
  "cant widths": inchesList,
  "cant offset": oneOf({ centred: ["centered", "middle"], free: ["anywhere"] }),
  "ring angle": degrees,
  heart: inches,
};

/** What CUTPLAN, CUTYIELD and the end view ask of a log. */
export const CUT_REQUEST: Declarations<CutRequest> = {
  /** Small-end diameter inside bark, up and down as the log lies. */
  diameterIn: inches,
  /** Length of the log. */
  lengthFt: logLength,
  /** Thicknesses such as 4/4, one under the other; or columns thickness, green size, price a board foot, from width. */
  products: sameForAll(columns(PRODUCT_COLUMNS)),
  /** Width of the saw cut. */
  kerfIn: sameForAll(inches),
  /** live (through and through), slab (live edge), cant or quarter. */
  pattern: optional(oneOf(PATTERN_NAMES)),
  /** Two columns of name and value, such as scale step and 1/16. */
  settings: settings(CUT_SETTINGS),
};
