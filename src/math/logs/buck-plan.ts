import { mustBeAbove, mustBeAtLeast, mustBeBetween, NoAnswer } from "../errors";
import { IN_PER_FT } from "../units";
import { LONGEST_FT, refusalOf } from "./log";
import { LOG_RULES, type LogRuleName } from "./log-rules";

/** What a board foot brings in a log whose small end is at least so thick, and which is of that length where one is given. */
export interface LogPrice {
  fromIn: number;
  price: number;
  lengthFt?: number | undefined;
}

/** A log of the plan; its places are inches from the butt, its length without the trim. */
export interface BuckedLog {
  fromIn: number;
  toIn: number;
  lengthFt: number;
  smallIn: number;
  boardFeet: number;
  /** Money for a board foot; nothing where no prices are given. */
  price?: number;
  worth: number;
}

export interface BuckPlan {
  logs: BuckedLog[];
  /** Board feet, or money where prices are given. */
  worth: number;
  leftIn: number;
}

/**
 * Where to cut a long stem so that its logs scale, or sell, for the most.
 *
 * Every place of a cut on whole inches from the butt is tried with every length, so no other cuts on whole inches give
 * more. The diameter goes in a straight line from reading to reading. A log is measured at its small end, behind its trim,
 * which holds the saw cut; one that the rule cannot scale, or that no price is given for, is worth nothing.
 *
 * @formula by dynamic program: best(x) is the greatest of best(x + 1) and, for each length, worth(x, length) + best(x
 *   + length + trim, up to a whole inch)
 * @source plain arithmetic: the best of the rest of the stem, from its top down to its butt
 * @range stems to 300 ft; 2 readings or more; up to 40 lengths
 */
export function buckPlan(stem: Stem): BuckPlan {
  mustBeSound(stem);
  const stemIn = Math.floor(stem.lengthFt * IN_PER_FT + 1e-9);
  const best = new Float64Array(stemIn + 1);
  const chosen = new Array<{ toIn: number; lengthFt: number } | undefined>(stemIn + 1);
  for (let fromIn = stemIn - 1; fromIn >= 0; fromIn--) {
    best[fromIn] = best[fromIn + 1]!;
    for (const lengthFt of stem.lengthsFt) {
      const toIn = Math.ceil(fromIn + lengthFt * IN_PER_FT + stem.trimIn - HAIR);
      if (toIn > stemIn) continue;
      const worth = worthOf(stem, fromIn, toIn, lengthFt);
      if (worth === 0 || worth + best[toIn]! <= best[fromIn]! + HAIR) continue;
      best[fromIn] = worth + best[toIn]!;
      chosen[fromIn] = { toIn, lengthFt };
    }
  }
  const logs: BuckedLog[] = [];
  for (let at = 0; at < stemIn;) {
    const log = chosen[at];
    if (log) logs.push(bucked(stem, at, log.toIn, log.lengthFt));
    at = log ? log.toIn : at + 1;
  }
  return { logs, worth: best[0]!, leftIn: stemIn - logs.reduce((sum, log) => sum + log.toIn - log.fromIn, 0) };
}

/** Two plans that differ by less are the same plan in other binary digits; the lower cut stands. */
const HAIR = 1e-9;

export interface Stem {
  /** Inside bark at equal steps, butt first, the last at the top. */
  diametersIn: readonly number[];
  lengthFt: number;
  /** Lengths that a log may have. */
  lengthsFt: readonly number[];
  prices: readonly LogPrice[];
  trimIn: number;
  rule: LogRuleName;
}

function mustBeSound({ diametersIn, lengthFt, lengthsFt, trimIn }: Stem): void {
  if (diametersIn.length < 2)
    throw new NoAnswer(`diameters: wanted 2 or more, butt first and the last at the top, got ${diametersIn.length}`);
  for (const [at, diameterIn] of diametersIn.entries()) mustBeAbove(0, diameterIn, `diameter ${at + 1} (in)`);
  mustBeAbove(0, lengthFt, "length of the stem (ft)");
  mustBeBetween(0, LONGEST_FT, lengthFt, "length of the stem (ft)");
  mustBeBetween(1, 40, lengthsFt.length, "number of lengths");
  for (const each of lengthsFt) mustBeAtLeast(1, each, "length of a log (ft)");
  mustBeAtLeast(0, trimIn, "trim (in)");
}

/** What a log is worth: nothing where the rule cannot scale it or nobody buys it. */
function worthOf(stem: Stem, fromIn: number, toIn: number, lengthFt: number): number {
  const price = priceOf(stem.prices, diameterAt(stem, toIn), lengthFt);
  return price === 0 ? 0 : price * scaledAt(stem, fromIn, toIn, lengthFt);
}

function bucked(stem: Stem, fromIn: number, toIn: number, lengthFt: number): BuckedLog {
  const smallIn = diameterAt(stem, toIn);
  const boardFeet = scaledAt(stem, fromIn, toIn, lengthFt);
  const price = priceOf(stem.prices, smallIn, lengthFt);
  const sold = stem.prices.length > 0;
  return { fromIn, toIn, lengthFt, smallIn, boardFeet, ...(sold && { price }), worth: price * boardFeet };
}

/** Thickness of the stem so many inches from the butt. */
export function diameterAt({ diametersIn, lengthFt }: Stem, placeIn: number): number {
  const at = (placeIn / (lengthFt * IN_PER_FT)) * (diametersIn.length - 1);
  const before = Math.min(Math.floor(at), diametersIn.length - 2);
  return diametersIn[before]! + (at - before) * (diametersIn[before + 1]! - diametersIn[before]!);
}

/** Board feet by the rule, which for a few is asked at mid-length; 0 where it does not scale such a log. */
function scaledAt(stem: Stem, fromIn: number, toIn: number, lengthFt: number): number {
  const { limits, measuredAt, boardFeet } = LOG_RULES[stem.rule];
  const placeIn = measuredAt === "middle" ? fromIn + (lengthFt * IN_PER_FT) / 2 : toIn;
  const log = { diameterIn: diameterAt(stem, placeIn), lengthFt };
  return refusalOf(log, limits) ? 0 : boardFeet(log);
}

/** The best price that the log's end and length reach, or 0; a board foot counts as 1 where there are no prices. */
function priceOf(prices: readonly LogPrice[], smallIn: number, lengthFt: number): number {
  if (prices.length === 0) return 1;
  let best = 0;
  for (const { fromIn, price, lengthFt: only } of prices)
    if (smallIn >= fromIn - HAIR && (only === undefined || only === lengthFt)) best = Math.max(best, price);
  return best;
}
