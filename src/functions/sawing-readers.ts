import { Unreadable } from "../cells/error";
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
  settings as settingsOf,
  yesNo,
  type Argument,
} from "../cells/read";

/** How a cell is read under a name. */
type Reader<T> = (range: unknown, name: string) => Argument<T>;

const PATTERN_NAMES = {
  live: ["live sawing", "through and through", "through", "flat sawn", "plain"],
  slab: ["slabs", "live edge", "live edge slabs"],
  cant: ["cants"],
  quarter: ["quarters", "quartersawn", "quarter sawn"],
};

const PRODUCT_COLUMNS = {
  thickness: inches,
  "green size": maybe(inches),
  price: maybe(money),
  "from width": maybe(inches),
};

/** A setting that is left out, or blank where 0 means nothing, takes the plan's default. */
const CUT_SETTINGS = {
  "small end across": maybe(inches),
  taper: orZero(inches),
  "log lies": named({ split: ["shimmed", "pith level"], flat: ["full", "full taper", "on the bed"] }),
  sweep: maybe(inches),
  crown: named({ up: [], down: [], side: ["sideways"] }),
  "rip kerf": maybe(inches),
  "scale step": maybe(inches),
  objective: named({ "board feet": ["bf", "feet"], value: ["money"] }),
  "pass cost": maybe(number),
  "minimum width": maybe(inches),
  "maximum width": maybe(inches),
  "width step": maybe(inches),
  widths: maybe(inchesList),
  "width allowance": maybe(inches),
  "minimum length": maybe(feet),
  "length step": maybe(feet),
  trim: maybe(inches),
  wane: orZero(number),
  rip: yesNo,
  "bed clearance": maybe(inches),
  "guide opening": maybe(inches),
  "cant widths": maybe(inchesList),
  "cant offset": named({ centred: ["centered", "middle"], free: ["anywhere"] }),
  "ring angle": orZero(degrees),
  heart: maybe(inches),
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

/** More readings than anyone takes on one board. */
const MOST_READINGS = 24;

/** A blank cell is a reading not taken. */
export const READING_COLUMNS = Object.fromEntries(
  Array.from({ length: MOST_READINGS }, (_, i) => [`reading ${i + 1}`, maybe(inches)]),
);

/**
 * For a figure that stands once for a whole list of logs, such as the kerf: it must be there, but a row of the list
 * that has nothing else in it is still a row that nobody has filled in.
 */
export function sameForAll<T>(reader: Argument<T>): Argument<T> {
  const read = (cell: unknown, name: string): T => {
    if (reader.isBlank(cell)) throw new Unreadable(name, "a value, since others of this row are given", "a blank");
    return reader.read(cell, name);
  };
  return { ...reader, needed: null, isBlank: () => false, read };
}

function maybe<T>(reader: Reader<T>): Reader<T | undefined> {
  return (range, name) => optional(reader(range, name));
}

function orZero(reader: Reader<number>): Reader<number> {
  return (range, name) => mayBeZero(reader(range, name));
}

function named<K extends string>(names: Record<K, readonly string[]>): Reader<K | undefined> {
  return (range, name) => optional(oneOf<K>(names, range, name));
}
