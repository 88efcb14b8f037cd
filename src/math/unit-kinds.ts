import {
  BF_PER_FT3,
  FORCES,
  FT3_PER_YD3,
  IN_PER_FT,
  KG_PER_LB,
  KG_PER_TONNE,
  LENGTHS,
  M3_PER_FT3,
  M_PER_FT,
  POWERS,
  SOLID_SHARE_OF_STACK,
  SPEEDS,
  STRESSES,
  VOLUMES,
  WEIGHTS,
  type Unit,
} from "./units";

/** What a unit measures. Temperatures have no common zero, so their scales are no factors. */
export type Kind = "length" | "area" | "wood" | "weight" | "speed" | "force" | "stress" | "power" | "temperature";

/** A unit of the trade, or a price by one of them. */
export interface TradeUnit extends Unit {
  kind: Kind;
  isPrice: boolean;
}

/** Feet in a yard; a thousand board feet are an "M" in the trade. */
const [FT_PER_YD, THOUSAND] = [3, 1000];
const LB_PER_SHORT_TON = 2000;

/** Areas, in square feet. */
const AREAS: Readonly<Record<string, Unit>> = {
  ft2: { holds: 1, also: ["square feet", "square foot", "sq ft", "ft^2", "ft²"] },
  in2: { holds: 1 / IN_PER_FT ** 2, also: ["square inches", "square inch", "sq in", "in^2", "in²"] },
  m2: {
    holds: 1 / M_PER_FT ** 2,
    also: ["square meters", "square metres", "square meter", "square metre", "sq m", "m^2", "m²"],
  },
};

const LENGTHS_TOO: Readonly<Record<string, Unit>> = {
  ...LENGTHS,
  yd: { holds: FT_PER_YD * IN_PER_FT, also: ["yard", "yards"] },
};

/** A stere is a stack of a cubic meter with its air, as a cord is of 128 cubic feet. */
const WOOD: Readonly<Record<string, Unit>> = {
  ...VOLUMES,
  "thousand board feet": { holds: THOUSAND / BF_PER_FT3, also: ["mbf", "mbm", "mfbm", "1000 board feet", "1000 bf"] },
  yd3: { holds: FT3_PER_YD3, also: ["cubic yards", "cubic yard", "cu yd", "yd^3", "yd³"] },
  stere: { holds: SOLID_SHARE_OF_STACK / M3_PER_FT3, also: ["steres", "st"] },
};

const WEIGHTS_TOO: Readonly<Record<string, Unit>> = {
  ...WEIGHTS,
  t: { holds: KG_PER_TONNE / KG_PER_LB, also: [...WEIGHTS.t.also, "metric ton", "metric tons"] },
  "short ton": { holds: LB_PER_SHORT_TON, also: ["short tons", "us ton", "us tons"] },
};

/** A pound or a kilogram that is asked for is a weight: of forces only the spellings that say so are taken. */
const FORCES_PLAIN: Readonly<Record<string, Unit>> = Object.fromEntries(
  Object.entries(FORCES).map(([name, { holds }]) => [name, { holds, also: [] }]),
);

/** The holds of a temperature's scale are not used: celsius and fahrenheit are turned into each other by their rule. */
const TEMPERATURES: Readonly<Record<string, Unit>> = {
  F: { holds: 1, also: ["°f", "fahrenheit", "deg f"] },
  C: { holds: 1, also: ["°c", "celsius", "deg c"] },
};

const KINDS: readonly [Kind, Readonly<Record<string, Unit>>][] = [
  ["length", LENGTHS_TOO],
  ["area", AREAS],
  ["wood", WOOD],
  ["weight", WEIGHTS_TOO],
  ["speed", SPEEDS],
  ["force", FORCES_PLAIN],
  ["stress", STRESSES],
  ["power", POWERS],
  ["temperature", TEMPERATURES],
];

/** What is bought and sold by the unit. */
const SOLD: readonly Kind[] = ["length", "area", "wood", "weight"];

/** Every unit of the trade by its name, and "per" such a unit for a price. */
export const TRADE_UNITS: Readonly<Record<string, TradeUnit>> = Object.fromEntries(
  KINDS.flatMap(([kind, units]) => [
    ...Object.entries(units).map(([name, unit]): [string, TradeUnit] => [
      name,
      { ...plural(unit), kind, isPrice: false },
    ]),
    ...(SOLD.includes(kind)
      ? Object.entries(units).map(([name, unit]): [string, TradeUnit] => [`per ${name}`, price(name, unit, kind)])
      : []),
  ]),
);

/** People write pounds as well as pound. */
function plural({ holds, also }: Unit): Unit {
  const words = also
    .filter((word) => /^[a-z]{4,}$/.test(word) && !/(?:s|feet|inch)$/.test(word))
    .map((word) => `${word}s`);
  return { holds, also: [...new Set([...also, ...words])] };
}

function price(name: string, { holds, also }: Unit, kind: Kind): TradeUnit {
  return { holds, kind, isPrice: true, also: [`/${name}`, ...also.flatMap((word) => [`per ${word}`, `/${word}`])] };
}
