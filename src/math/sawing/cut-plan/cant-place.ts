import { SAME_WORTH } from "./stack";

/** Where a cant's faces are above the bed, and what the boards outside them are worth. */
export interface CantPlace {
  lowIn: number;
  highIn: number;
  jacketsWorth: number;
}

/**
 * The place of the greatest worth among those of each cant width, found without sawing the cant in all of them.
 *
 * A board of the turned cant reaches to either side as far as the log or the cant's face lets it. For a cant of one
 * width the two together are greatest with the pith in its middle, and only get less as the cant moves off it; so does
 * the worth of its boards. Where two places are worth the same, so is every place between them; where the nearer of two
 * could not win even with the best jackets between them, none between them can.
 */
export function bestPlace<P extends CantPlace>(
  placesByWidth: readonly (readonly P[])[],
  pithIn: number,
  cantWorth: (place: P) => number,
): P | undefined {
  let best: P | undefined;
  let most = 0;
  const consider = (place: P, worth: number) => {
    if (place.jacketsWorth + worth <= most + SAME_WORTH) return;
    most = place.jacketsWorth + worth;
    best = place;
  };

  for (const places of placesByWidth) {
    const outward = [...places].sort((a, b) => offPith(a, pithIn) - offPith(b, pithIn));
    const worthAt = (at: number) => {
      const worth = cantWorth(outward[at]!);
      consider(outward[at]!, worth);
      return worth;
    };
    const searchBetween = (from: number, fromWorth: number, to: number, toWorth: number): void => {
      const between = outward.slice(from + 1, to);
      if (between.length === 0) return;
      if (fromWorth - toWorth <= SAME_WORTH) return between.forEach((place) => consider(place, toWorth));
      if (fromWorth + Math.max(...between.map(({ jacketsWorth }) => jacketsWorth)) <= most + SAME_WORTH) return;
      const middle = (from + to) >> 1;
      const worth = worthAt(middle);
      searchBetween(from, fromWorth, middle, worth);
      searchBetween(middle, worth, to, toWorth);
    };
    const last = outward.length - 1;
    if (last >= 1) searchBetween(0, worthAt(0), last, worthAt(last));
    else if (last === 0) worthAt(0);
  }
  return best;
}

/** How far the middle of the cant is off the pith. */
export function offPith({ lowIn, highIn }: Pick<CantPlace, "lowIn" | "highIn">, pithIn: number): number {
  return Math.abs((lowIn + highIn) / 2 - pithIn);
}
