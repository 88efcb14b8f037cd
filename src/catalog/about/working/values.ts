import { deviation, mean, squaresAboutMean, sum } from "../../../math/numbers";
import { downTo, nearest, nearestHalfDown, toDecimals, upTo } from "../../../math/rounding";

/** What a step of a formula may be worth: a number, a word, a yes or no, a list or a record of them, or nothing given. */
export type Value = number | string | boolean | undefined | readonly Value[] | { readonly [key: string]: Value };

type Numbers = (...numbers: number[]) => number;

/** Names that stand for a number of their own. */
export const CONSTANTS: Readonly<Record<string, Value>> = {
  pi: Math.PI,
  deg: Math.PI / 180,
  no: false,
  none: undefined,
};

/** Functions of numbers; of a list they are taken item by item. Roundings forgive the last binary digits. */
const OF_NUMBERS: Readonly<Record<string, Numbers>> = {
  sqrt: Math.sqrt,
  sin: Math.sin,
  asin: Math.asin,
  ln: Math.log,
  exp: Math.exp,
  abs: Math.abs,
  hypot: Math.hypot,
  floor: Math.floor,
  ceil: Math.ceil,
  down: (value, step = 1) => downTo(step, value),
  up: (value, step = 1) => upTo(step, value),
  nearest: (value, step = 1) => nearest(step, value),
  halfdown: (value, step = 1) => nearestHalfDown(step, value),
  decimals: (value, decimals) => toDecimals(decimals!, value),
};

/** Functions of a whole list. */
const OF_A_LIST: Readonly<Record<string, (list: readonly number[]) => Value>> = {
  sum,
  mean,
  squares: squaresAboutMean,
  deviation,
  product: (list) => list.reduce((all, one) => all * one, 1),
  /** What stands before each item, added up. */
  before: (list) => list.map((_, at) => sum(list.slice(0, at))),
};

/** Between numbers; `=` and `!=` between words too. */
const SIGNS: Readonly<Record<string, (a: number, b: number) => number | boolean>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
  "=": (a, b) => a === b,
  "!=": (a, b) => a !== b,
  "<": (a, b) => a < b,
  "<=": (a, b) => a <= b,
  ">": (a, b) => a > b,
  ">=": (a, b) => a >= b,
  and: (a, b) => Boolean(a) && Boolean(b),
};

/** Whether a name is a function of the notation itself, and not another formula. */
export function isBuiltIn(name: string): boolean {
  return (
    name in OF_NUMBERS ||
    name in OF_A_LIST ||
    ["min", "max", "count", "steps", "item", "along", "merged"].includes(name)
  );
}

export function builtIn(name: string, given: readonly Value[]): Value {
  if (name in OF_NUMBERS) return itemByItem(OF_NUMBERS[name]!, given);
  if (name in OF_A_LIST) return ofList(OF_A_LIST[name]!, given[0]);
  if (name === "count") return (given[0] as readonly Value[]).length;
  if (name === "steps") return stepsOf(...(given.map(numberIn) as [number, number, number]));
  if (name === "item") return (given[0] as readonly Value[])[numberIn(given[1]) - 1];
  if (name === "along") return widthAlong(listOf(given[0]), numberIn(given[1]));
  if (name === "merged") return (given[0] as readonly Value[]).flat() as Value;
  const pick = name === "min" ? Math.min : Math.max;
  return given.length === 1 ? pick(...listOf(given[0])) : itemByItem(pick, given);
}

export function between(sign: string, left: Value, right: Value): Value {
  const isOfWords = [left, right].some((side) => typeof side === "string" || typeof side === "boolean");
  if (isOfWords && (sign === "=" || sign === "!=")) return (left === right) === (sign === "=");
  return itemByItem(SIGNS[sign]! as Numbers, [left, right]);
}

/** The part of a record, or of every record of a list. */
export function partOf(of: Value, key: string): Value {
  if (Array.isArray(of)) return of.map((one: Value) => partOf(one, key));
  return (of as { readonly [key: string]: Value })[key];
}

/** For each item of the lists given; a single value goes with every item. */
export function itemByItem(of: (...numbers: number[]) => Value, given: readonly Value[]): Value {
  const longest = given.reduce<number>((most, one) => (Array.isArray(one) ? Math.max(most, one.length) : most), -1);
  if (longest < 0) return of(...given.map(numberIn));
  return Array.from({ length: longest }, (_, at) =>
    itemByItem(
      of,
      given.map((one) => (Array.isArray(one) ? (one[at] as Value) : one)),
    ),
  );
}

/** From a number, each a step on, as long as they are under the end. */
function stepsOf(from: number, end: number, by: number): number[] {
  const steps: number[] = [];
  for (let at = from; at < end; at += by) steps.push(at);
  return steps;
}

/** What stands at a share of the way from the first item to the last, straight between neighbors. */
function widthAlong(list: readonly number[], share: number): number {
  const place = share * (list.length - 1);
  const before = list[Math.floor(place)]!;
  return before + (list[Math.ceil(place)]! - before) * (place - Math.floor(place));
}

/** Of a list of lists, one answer for each. */
function ofList(of: (list: readonly number[]) => Value, list: Value): Value {
  const isOfLists = Array.isArray(list) && Array.isArray(list[0]);
  return isOfLists ? list.map((one: Value) => ofList(of, one)) : of(listOf(list));
}

function listOf(value: Value): number[] {
  if (!Array.isArray(value)) throw new Error("wanted a list");
  return value.map(numberIn);
}

function numberIn(value: Value): number {
  if (typeof value === "boolean") return Number(value);
  if (typeof value !== "number")
    throw new Error(`wanted a number, got ${value === undefined ? "nothing" : String(value)}`);
  return value;
}
