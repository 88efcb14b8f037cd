import { hairOver } from "../../math/rounding";
import { bySpelling, fahrenheitFromCelsius, FORCES, POWERS, SPEEDS, STRESSES, WEIGHTS } from "../../math/units";
import { shown } from "../cell";
import { Unreadable } from "../error";
import { changed, declared, numberOrText, type Declaration, type Facts } from "./argument";
import { mayBeZero, zeroAsText } from "./zero";
import { commaRefusal, NUMBER, tidied, valueOf } from "./digits";

/** Digits that a sheet keeps and shows; what stands behind them is the accident of binary. */
const SHEET_DIGITS = 15;

/** No amount of this trade is larger, or smaller and not 0; what is, is a slip of the finger. */
const LARGEST = 1e12;
const SMALLEST = 1e-9;

const WRITTEN = new RegExp(`^(-?)(${NUMBER}) ?([^\\d\\s].*)?$`);

/** A kind of amount: what a message calls it, what each unit counts in base units, and what a bare number means. */
interface Kind {
  kind: string;
  zeroAs?: string;
  called: string;
  examples?: string;
  /** In small letters; the plural of a word is read too. */
  units: Readonly<Record<string, number | ((given: number) => number)>>;
  bare?: (given: number) => number;
}

const WEIGHT: Kind = {
  kind: "weight",
  zeroAs: "0 lb",
  called: "pounds",
  examples: "40, 40 lb, 18 kg, 850 g or 1.2 t (metric)",
  units: bySpelling(WEIGHTS),
};
/** Up to 300 % is read as a share, so that a cell formatted as percent works: 1.2 is 120 %. */
const MOISTURE: Kind = {
  kind: "moisture",
  zeroAs: "0%",
  called: "percent",
  examples: "12 or 12%",
  units: { "%": 1, percent: 1 },
  bare: shareUpTo(3),
};
const SHARE: Kind = {
  kind: "share",
  zeroAs: "0%",
  called: "percent",
  examples: "65 or 65%",
  units: { "%": 1, percent: 1 },
  bare: shareUpTo(1),
};
const TEMPERATURE: Kind = {
  kind: "temperature",
  zeroAs: "0 F",
  called: "degrees Fahrenheit",
  examples: "68 or 20 C",
  units: {
    f: 1,
    "°f": 1,
    "deg f": 1,
    fahrenheit: 1,
    c: fahrenheitFromCelsius,
    "°c": fahrenheitFromCelsius,
    "deg c": fahrenheitFromCelsius,
    celsius: fahrenheitFromCelsius,
  },
};
const SPEED: Kind = {
  kind: "speed",
  zeroAs: "0 ft/min",
  called: "feet per minute",
  examples: "5000 or 25 m/s",
  units: bySpelling(SPEEDS),
};
const FORCE: Kind = {
  kind: "force",
  zeroAs: "0 lbf",
  called: "pounds of force",
  examples: "2500, 11 kN or 1134 kg",
  units: bySpelling(FORCES),
};
const STRESS: Kind = {
  kind: "stress",
  zeroAs: "0 psi",
  called: "psi",
  examples: "15000 or 100 MPa",
  units: bySpelling(STRESSES),
};
const POWER: Kind = {
  kind: "power",
  zeroAs: "0 hp",
  called: "horsepower",
  examples: "20 or 15 kW",
  units: bySpelling(POWERS),
};
const ANGLE: Kind = {
  kind: "angle",
  zeroAs: "0 deg",
  called: "degrees",
  examples: "60",
  units: { "°": 1, deg: 1, degree: 1 },
};
/** 12% as text counts as the sheet itself counts it: 0.12. */
const PLAIN: Kind = { kind: "number", zeroAs: "none", called: "a number", units: { "%": 0.01 } };
const MONEY: Kind = {
  kind: "money",
  zeroAs: "none",
  called: "an amount of money",
  examples: "12.50, without its sign",
  units: {},
};
const COUNT: Kind = { kind: "count", called: "a whole number", units: {} };

/** A weight in pounds. */
export const pounds = above(WEIGHT);
/** A moisture content in percent of the oven-dry weight. 0 is oven dry. */
export const moisture = zeroAsText(above(MOISTURE));
/** A humidity, share, slip or waste in percent. */
export const percent = zeroAsText(above(SHARE));
/** A temperature in degrees Fahrenheit; it may be below 0. */
export const fahrenheit = declared<number>({ ...factsOf(TEMPERATURE), zero: "text" }, "number", reads(TEMPERATURE));
/** The speed of a rim, band or feed. */
export const feetPerMinute = above(SPEED);
/** A force or pull. */
export const poundsForce = above(FORCE);
/** A stress or pressure. */
export const psi = above(STRESS);
/** A power. */
export const horsepower = above(POWER);
/** An angle in degrees. */
export const degrees = zeroAsText(above(ANGLE));
/** A price or a sum, in whatever currency. */
export const money = above(MONEY);
/** A plain number above 0: rpm, days, a ratio. */
export const number = above(PLAIN);

/** A plain number above 0, or a word that stands for as many as come. */
export function numberOr<W extends string>(word: W): Declaration<number | W> {
  return changed<number, number | W>(number, { reads: `12, or ${word}` }, (argument) => ({
    ...argument,
    read: (cell, name) =>
      typeof cell === "string" && cell.trim().toLowerCase() === word ? word : argument.read(cell, name),
  }));
}

/** A whole number above 0. */
export const count = declared<number>({ ...factsOf(COUNT), zero: "blank" }, "number", (cell, as) =>
  whole(amountIn(cell, as, COUNT), cell, as),
);

/** Any number, 0 and negatives too; a blank is 0. */
export const anyNumber = mayBeZero(declared<number>(factsOf(PLAIN), "number", reads(PLAIN)));

/** Lets an amount be below 0, such as a fee received where a cost is asked. */
export function mayBeNegative(declaration: Declaration<number>): Declaration<number> {
  return changed(declaration, {}, (argument) => ({
    ...argument,
    read: (cell, name) => {
      if (typeof cell === "number" && cell < 0) return -argument.read(-cell, name);
      if (typeof cell === "string" && /^\s*[-−]/.test(cell)) return -argument.read(cell.replace(/[-−]/, ""), name);
      return argument.read(cell, name);
    },
  }));
}

function above(kind: Kind): Declaration<number> {
  return declared({ ...factsOf(kind), zero: "blank" }, "number", (cell, as) => {
    const amount = amountIn(cell, as, kind);
    if (amount < SMALLEST) throw new Unreadable(as, wanted(kind, " above 0"), shown(cell));
    return amount;
  });
}

function reads(kind: Kind) {
  return (cell: unknown, as: string) => amountIn(cell, as, kind);
}

function factsOf({ kind, called, examples, zeroAs }: Kind): Omit<Facts, "optional"> {
  return { kind, bare: called, ...(examples && { reads: examples }), ...(zeroAs && { zeroAs }) };
}

function amountIn(cell: unknown, name: string, kind: Kind): number {
  const given = numberOrText(cell, name, wanted(kind));
  const amount = typeof given === "number" ? (kind.bare?.(given) ?? given) : amountInText(given, name, kind);
  if (Math.abs(amount) > LARGEST) throw new Unreadable(name, wanted(kind, ` up to ${LARGEST}`), shown(cell));
  return amount;
}

function amountInText(text: string, name: string, kind: Kind): number {
  const comma = commaRefusal(text);
  const [, sign, digits, unit] = WRITTEN.exec(tidied(text)) ?? [];
  const value = digits === undefined ? undefined : valueOf(digits);
  if (comma || value === undefined) throw new Unreadable(name, comma ?? wanted(kind), shown(text));
  const signed = sign ? -value : value;
  if (unit === undefined) return kind.bare?.(signed) ?? signed;
  const factor = factorOf(unit, kind);
  if (factor === undefined) throw new Unreadable(name, wanted(kind), shown(text));
  return typeof factor === "function" ? factor(signed) : signed * factor;
}

/** What a unit counts: with a point behind it (lb.) and in the plural (pounds) as well. */
function factorOf(unit: string, { units }: Kind) {
  const plain = unit.replace(/\.$/, "");
  const known = [plain, plain.replace(/s$/, "")].find((spelling) => Object.hasOwn(units, spelling));
  return known === undefined ? undefined : units[known];
}

/** What a message asks for: `pounds above 0, such as 40 or 18 kg`. */
function wanted({ called, examples }: Kind, limit = ""): string {
  return `${called}${limit}${examples ? `, such as ${examples}` : ""}`;
}

function whole(amount: number, cell: unknown, name: string): number {
  if (!Number.isInteger(amount) || amount <= 0) throw new Unreadable(name, wanted(COUNT, " above 0"), shown(cell));
  return amount;
}

/** A sum of shares may come out a hair over the limit, and 0.07 times 100 a hair over 7: neither is meant. */
function shareUpTo(limit: number) {
  return (given: number) => {
    if (given <= 0 || given > hairOver(limit)) return given;
    return Number((Math.min(given, limit) * 100).toPrecision(SHEET_DIGITS));
  };
}
