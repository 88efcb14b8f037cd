import type { CutRequest } from "../../../../src/math/sawing/cut-plan/cut-request";

/** A log with a mill and products to saw it into; inches, but for the lengths of boards, which are feet. */
export interface SmallLog {
  pattern: "live" | "slab" | "cant" | "quarter" | "timber";
  /** Small end up and down, and across; length; growth in diameter over 4 ft. */
  d: number;
  dw: number;
  L: number;
  T: number;
  /** Flat on the bed, or with its pith level. */
  flat: boolean;
  /** The bow at mid-length: up, down or to the side. */
  sweep: number;
  way: 1 | -1 | 0;
  kerf: number;
  ripKerf: number;
  /** The scale step. */
  g: number;
  products: { tally: number; green: number; prices: [from: number, price: number][] }[];
  passCost: number;
  minWidth: number;
  maxWidth: number;
  widthStep: number;
  widths?: number[];
  widthAllow: number;
  minLength: number;
  lengthStep: number;
  trim: number;
  wane: number;
  rip: boolean;
  bedMin: number;
  throat: number;
  cantWidths: number[];
  free: boolean;
  timber: [number, number];
  minRing: number;
  heart: number;
}

/** The same sequence of numbers from 0 to 1 every time (a multiply-and-shift generator). */
export function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A small log with a mill and products to saw it into, all thrown with dice. */
export function throwLog(roll: () => number, pattern: SmallLog["pattern"], bowed = false): SmallLog {
  const pick = <T>(...choices: T[]): T => choices[Math.floor(roll() * choices.length)]!;
  const between = (low: number, high: number) => low + roll() * (high - low);
  const trim = bowed ? pick(0, 6) : pick(0, 2, between(0, 4));
  const d = between(4, pattern === "quarter" ? 11 : 9);
  const dw = pattern === "quarter" ? d : pick(d, between(4, 9));
  const L = bowed ? pick(48, 60, 72) : between(40, 100);
  const T = pick(0, 0.5, 1, 2);
  const butt = Math.max(d, dw) + (T * L) / 48;
  const byValue = roll() < 0.4;
  const thicknesses = pick([1], [1, 1.5], [1, 2], [0.75, 1.25]);
  const g = pick(1 / 4, 1 / 8, 1 / 16, 0.1);
  return {
    pattern,
    d,
    dw,
    L,
    T,
    flat: !bowed && (pattern === "live" || pattern === "slab") && roll() < 0.5,
    sweep: bowed ? between(0.3, 1.5) : 0,
    way: pick(1, -1, 0),
    // a kerf under half a step of the scale is refused
    kerf: Math.max(pick(0.05, 0.125, 0.25), g / 2),
    ripKerf: pick(0.125, 0.25),
    g,
    products: thicknesses.map((t) => ({
      tally: Math.max(1, t),
      green: t + pick(0, 0.125, 0.2),
      prices: byValue
        ? [
            [0, between(1, 4)],
            [3, between(1, 6)],
          ]
        : [[0, 1]],
    })),
    passCost: pick(0, 0, 0.2),
    minWidth: pick(1, 2, 3),
    maxWidth: pick(Infinity, 4),
    widthStep: pick(0.5, 1),
    widths: pick(undefined, undefined, [2, 3, 4]),
    widthAllow: pick(0, 0.125),
    minLength: pick(2, 3, 4),
    lengthStep: pick(1, 1, 2, ...(bowed ? [] : [0.5])),
    trim,
    wane: pick(0, 0, 0.2, 0.4),
    rip: roll() < 0.4,
    bedMin: pick(0, 0, 0.6),
    throat: pattern === "live" || pattern === "slab" ? pick(Infinity, Infinity, butt * between(0.72, 1)) : Infinity,
    cantWidths: [pick(2, 3), 4],
    free: roll() < 0.5,
    minRing: pick(0, 30, 45, 60),
    heart: pick(0, 0.5),
    timber: pattern === "timber" ? [pick(2, 2.5, 3), pick(2, 3, 4)] : [2, 3],
  };
}

/** A log thrown with dice, as the planner is asked about it. */
export function requestFor(log: SmallLog): CutRequest {
  const byValue = log.products.some(({ prices }) => prices.length > 1);
  return {
    diameterIn: log.d,
    lengthFt: log.L / 12,
    kerfIn: log.kerf,
    pattern: log.pattern,
    products: log.products.flatMap(({ tally, green, prices }) =>
      prices.map(([from, price]) => ({ thickness: tally, "green size": green, price, "from width": from })),
    ),
    settings: {
      "small end across": log.dw,
      taper: log.T,
      "log lies": log.flat ? "flat" : "split",
      sweep: log.sweep,
      crown: log.way === 1 ? "up" : log.way === -1 ? "down" : "side",
      "rip kerf": log.ripKerf,
      "scale step": log.g,
      objective: byValue ? "value" : "board feet",
      "pass cost": log.passCost,
      "minimum width": log.minWidth,
      "maximum width": log.maxWidth,
      "width step": log.widthStep,
      widths: log.widths,
      "width allowance": log.widthAllow,
      "minimum length": log.minLength,
      "length step": log.lengthStep,
      trim: log.trim,
      wane: log.wane,
      rip: log.rip,
      "bed clearance": log.bedMin,
      "guide opening": Number.isFinite(log.throat) ? log.throat : undefined,
      "cant widths": log.cantWidths,
      "cant offset": log.free ? "free" : "centred",
      timber: { thicknessIn: log.timber[0], widthIn: log.timber[1] },
      "ring angle": log.minRing,
      heart: log.heart,
    },
  };
}
