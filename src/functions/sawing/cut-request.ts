import {
  columns,
  degrees,
  feet,
  inches,
  inchesList,
  mayBeZero,
  money,
  number,
  oneOf,
  optional,
  sameForAll,
  settings as settingsOf,
  yesNo,
  type Argument,
} from "../../cells/read";

const PATTERN_NAMES = {
  live: ["live sawing", "through and through", "through", "flat sawn", "plain"],
  slab: ["slabs", "live edge", "live edge slabs"],
  cant: ["cants"],
  quarter: ["quarters", "quartersawn", "quarter sawn"],
};

const PRODUCT_COLUMNS = {
  thickness: inches,
  "green size": inchesOrNone,
  price: (range: unknown, name: string) => optional(money(range, name)),
  "from width": inchesOrNone,
};

/** A setting that is blank takes the plan's default; a blank taper is a log without taper. */
const CUT_SETTINGS = {
  "small end across": inches,
  taper: (range: unknown, name: string) => mayBeZero(inches(range, name)),
  "log lies": named({ split: ["shimmed", "pith level"], flat: ["full", "full taper", "on the bed"] }),
  sweep: inches,
  crown: named({ up: [], down: [], side: ["sideways"] }),
  "rip kerf": inches,
  "scale step": inches,
  objective: named({ "board feet": ["bf", "feet"], value: ["money"] }),
  "pass cost": number,
  "minimum width": inches,
  "maximum width": inches,
  "width step": inches,
  widths: inchesList,
  "width allowance": inches,
  "minimum length": feet,
  "length step": feet,
  trim: inches,
  wane: (range: unknown, name: string) => mayBeZero(number(range, name)),
  rip: yesNo,
  "bed clearance": inches,
  "opening face": inches,
  "guide opening": inches,
  "cant widths": inchesList,
  "cant offset": named({ centred: ["centered", "middle"], free: ["anywhere"] }),
  "ring angle": degrees,
  heart: inches,
};

/** How CUTPLAN, CUTYIELD and the end view read what is asked of a log. */
export function cutRequest(
  diameter: unknown[][],
  length: unknown[][],
  products: unknown[][],
  kerf: unknown[][],
  pattern?: unknown[][],
  settings?: unknown[][],
) {
  return {
    diameterIn: inches(diameter, "diameter"),
    lengthFt: feet(length, "length"),
    products: sameForAll(columns(products, "products", PRODUCT_COLUMNS)),
    kerfIn: sameForAll(inches(kerf, "kerf")),
    pattern: optional(oneOf(PATTERN_NAMES, pattern, "pattern")),
    settings: settingsOf(settings, "settings", CUT_SETTINGS),
  };
}

/** The reader of a setting that is one of these names. */
function named<K extends string>(names: Record<K, readonly string[]>): (range: unknown, name: string) => Argument<K> {
  return (range, name) => oneOf<K>(names, range, name);
}

function inchesOrNone(range: unknown, name: string): Argument<number | undefined> {
  return optional(inches(range, name));
}
