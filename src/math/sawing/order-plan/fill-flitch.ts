import type { Worths, Yard } from "./weigh";
import { stripPieces } from "./worth";

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
}

/** What is still wanted of each piece of a kind. */
export type Wants = readonly number[];

/** Ways of placing strips that are tried in one flitch and run. */
const MOST_TRIES = 24;
const GAIN = 1e-9;

/** The best of a flitch within what is still wanted: the best strips where these are wanted, the worthiest others else. */
export function fillFlitch(yard: Yard, worths: Worths, k: number, profile: number, wanted: Wants): Filled {
  const { sums, profiles } = yard.kinds[k]!;
  const { flitches } = worths.kinds[k]!;
  const places = profiles[profile]!;
  const search: FlitchSearch = { yard, worths, k, run: -1, tries: 0, strips: [], best: NOTHING };
  for (let run = places.length - 1; run >= 0; run--) {
    const place = places[run]!;
    if (place <= 0 || flitches[run * sums.sizes.length + place]! <= search.best.worth + GAIN) continue;
    search.run = run;
    search.tries = MOST_TRIES;
    placeStrips(search, place, yard.kinds[k]!.kind.widths.length - 1, wanted, 0);
  }
  return search.best;
}

const NOTHING: Filled = { worth: 0, run: -1, strips: [] };

interface FlitchSearch {
  yard: Yard;
  worths: Worths;
  k: number;
  run: number;
  /** Ways still to be tried in this run. */
  tries: number;
  /** Strips placed so far. */
  strips: Strip[];
  best: Filled;
}

/** Strips side by side, wider ones first; no branch is followed that even unlimited counts could not make better. */
function placeStrips(search: FlitchSearch, place: number, widest: number, wanted: Wants, worth: number): void {
  const { yard, worths, k, run, strips } = search;
  const { sums } = yard.kinds[k]!;
  const { flitches } = worths.kinds[k]!;
  const base = run * sums.sizes.length;
  if (worth > search.best.worth + GAIN) search.best = { worth, run, strips: strips.slice() };
  for (let width = widest; width >= 0; width--) {
    const beside = sums.left[width]![place]!;
    if (beside < 0) continue;
    if (worth + flitches[base + place]! <= search.best.worth + GAIN || search.tries-- <= 0) return;
    const strip = bestStrip(yard, worths, k, width, run, wanted);
    if (strip.worth <= 0 || worth + strip.worth + flitches[base + beside]! <= search.best.worth + GAIN) continue;
    strips.push({ width, pieces: strip.pieces });
    placeStrips(search, beside, width, without(wanted, strip.pieces), worth + strip.worth);
    strips.pop();
  }
}

/** What is wanted after some pieces. */
export function without(wanted: Wants, pieces: readonly number[]): number[] {
  const left = wanted.slice();
  for (const piece of pieces) left[piece]!--;
  return left;
}

interface BestStrip {
  worth: number;
  pieces: readonly number[];
}

/** The best strip of a width and run within what is wanted. */
function bestStrip(yard: Yard, worths: Worths, k: number, width: number, run: number, wanted: Wants): BestStrip {
  const runs = yard.kinds[k]!.kind.runsIn.length;
  const tables = worths.kinds[k]!;
  const unlimited = stripPieces(tables, yard.behind[k]!, runs, width, run);
  if (areWanted(unlimited, wanted)) return { worth: tables.strips[width * runs + run]!, pieces: unlimited };
  const search: StripSearch = {
    yard,
    worths,
    k,
    width,
    left: wanted.slice(),
    tries: MOST_TRIES,
    taken: [],
    best: { worth: 0, pieces: [] },
  };
  placePieces(search, run, 0, 0);
  return search.best;
}

function areWanted(pieces: readonly number[], wanted: Wants): boolean {
  for (let i = 0; i < pieces.length; i++) {
    let same = 1;
    for (let j = 0; j < i; j++) if (pieces[j] === pieces[i]) same++;
    if (wanted[pieces[i]!]! < same) return false;
  }
  return true;
}

interface StripSearch {
  yard: Yard;
  worths: Worths;
  k: number;
  width: number;
  left: number[];
  tries: number;
  taken: number[];
  best: BestStrip;
}

/** Pieces one after the other, none more often than it is wanted, bounded by the table of unlimited counts. */
function placePieces(search: StripSearch, run: number, from: number, worth: number): void {
  const { yard, worths, k, width, left, taken } = search;
  if (worth > search.best.worth + GAIN) search.best = { worth, pieces: taken.slice() };
  const { pieces, runsIn } = yard.kinds[k]!.kind;
  if (run < 0 || worth + worths.kinds[k]!.strips[width * runsIn.length + run]! <= search.best.worth + GAIN) return;
  for (let i = from; i < pieces.length && search.tries > 0; i++) {
    const behind = yard.behind[k]![i]![run]!;
    if (behind < -1 || left[i]! < 1 || yard.job.pieces[pieces[i]!]!.width > width) continue;
    search.tries--;
    left[i]!--;
    taken.push(i);
    placePieces(search, behind, i, worth + worths.prices[pieces[i]!]!);
    taken.pop();
    left[i]!++;
  }
}
