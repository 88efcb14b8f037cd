import type { KindWorth } from "./worth";
import { stripPieces } from "./worth";
import type { Worths, Yard } from "./weigh";

/** A strip: how wide, and the pieces one after the other in it, as places among the pieces of its kind. */
export interface Strip {
  width: number;
  pieces: readonly number[];
}

/** What is taken of one flitch. */
export interface Filled {
  worth: number;
  run: number;
  strips: readonly Strip[];
  /** What is still wanted after it, by piece of its kind. */
  left: Float64Array;
}

/** Ways of placing strips that are tried in one flitch and run. */
const MOST_TRIES = 60;
const GAIN = 1e-9;

/** The best of a flitch within what is still wanted: the best strips where these are wanted, the worthiest others else. */
export function fillFlitch(yard: Yard, worths: Worths, k: number, profile: number, wanted: Float64Array): Filled {
  const { sums, profiles } = yard.kinds[k]!;
  const { flitches } = worths.kinds[k]!;
  const places = profiles[profile]!;
  let best: Filled = { worth: 0, run: -1, strips: [], left: wanted };
  for (let run = places.length - 1; run >= 0; run--) {
    const place = places[run]!;
    if (place <= 0 || flitches[run * sums.sizes.length + place]! <= best.worth + GAIN) continue;
    best = placeStrips(yard, worths, k, run, place, wanted, best);
  }
  return best;
}

/** Strips side by side, wider ones first; no branch is followed that even unlimited counts could not make better. */
function placeStrips(
  yard: Yard,
  worths: Worths,
  k: number,
  run: number,
  place: number,
  wanted: Float64Array,
  toBeat: Filled,
): Filled {
  const { sums, kind } = yard.kinds[k]!;
  const { flitches } = worths.kinds[k]!;
  const base = run * sums.sizes.length;
  let best = toBeat;
  let tries = MOST_TRIES;
  const strips: Strip[] = [];
  const go = (at: number, widest: number, left: Float64Array, worth: number) => {
    if (worth > best.worth + GAIN) best = { worth, run, strips: strips.slice(), left };
    for (let width = widest; width >= 0; width--) {
      const beside = sums.left[width]![at]!;
      if (beside < 0 || tries-- <= 0 || worth + flitches[base + at]! <= best.worth + GAIN) continue;
      const strip = bestStrip(yard, worths, k, width, run, left);
      if (strip.worth <= 0) continue;
      if (worth + strip.worth + flitches[base + beside]! <= best.worth + GAIN) continue;
      strips.push({ width, pieces: strip.pieces });
      go(beside, width, without(left, strip.pieces), worth + strip.worth);
      strips.pop();
    }
  };
  go(place, kind.widths.length - 1, wanted, 0);
  return best;
}

function without(wanted: Float64Array, pieces: readonly number[]): Float64Array {
  const left = wanted.slice();
  for (const piece of pieces) left[piece]!--;
  return left;
}

interface BestStrip {
  worth: number;
  pieces: readonly number[];
}

/** The best strip of a width and run within what is wanted. */
function bestStrip(yard: Yard, worths: Worths, k: number, width: number, run: number, wanted: Float64Array): BestStrip {
  const { kind } = yard.kinds[k]!;
  const tables: KindWorth = worths.kinds[k]!;
  const runs = kind.runsIn.length;
  const unlimited = stripPieces(tables, yard.behind[k]!, runs, width, run);
  if (areWanted(unlimited, wanted)) return { worth: tables.strips[width * runs + run]!, pieces: unlimited };
  return limitedStrip(yard, worths, k, width, run, wanted);
}

function areWanted(pieces: readonly number[], wanted: Float64Array): boolean {
  for (let i = 0; i < pieces.length; i++) {
    let same = 1;
    for (let j = 0; j < i; j++) if (pieces[j] === pieces[i]) same++;
    if (wanted[pieces[i]!]! < same) return false;
  }
  return true;
}

/** Pieces one after the other, none more often than it is wanted, bounded by the table of unlimited counts. */
function limitedStrip(
  yard: Yard,
  worths: Worths,
  k: number,
  width: number,
  run: number,
  wanted: Float64Array,
): BestStrip {
  const { kind } = yard.kinds[k]!;
  const { strips } = worths.kinds[k]!;
  const runs = kind.runsIn.length;
  const fits = kind.pieces.map((piece) => yard.job.pieces[piece]!.width <= width);
  const left = wanted.slice();
  const taken: number[] = [];
  let best: BestStrip = { worth: 0, pieces: [] };
  let tries = MOST_TRIES;
  const go = (at: number, from: number, worth: number) => {
    if (worth > best.worth + GAIN) best = { worth, pieces: taken.slice() };
    if (at < 0 || worth + strips[width * runs + at]! <= best.worth + GAIN) return;
    for (let i = from; i < fits.length && tries > 0; i++) {
      const behind = yard.behind[k]![i]![at]!;
      if (!fits[i] || behind < -1 || left[i]! < 1) continue;
      tries--;
      left[i]!--;
      taken.push(i);
      go(behind, i, worth + worths.prices[kind.pieces[i]!]!);
      taken.pop();
      left[i]!++;
    }
  };
  go(run, 0, 0);
  return best;
}

