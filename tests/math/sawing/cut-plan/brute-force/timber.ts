import type { SmallLog } from "../small-logs";
import { jacketsFrom, usableInTurned } from "./cant";
import type { Sawyer } from "./sawyer";

/** A timber either way up, at every place that holds the pith, boards tried above it, below it and outside the cant. */
export function timberWorth(log: SmallLog, sawyer: Sawyer): number {
  const [one, other] = log.timber;
  const best = Math.max(stood(one, other, log, sawyer), stood(other, one, log, sawyer));
  return best > -Infinity ? best : 0;
}

/** The worth with the cant as wide as one side; less than any plan is worth where the timber does not come out. */
function stood(wide: number, thick: number, log: SmallLog, sawyer: Sawyer): number {
  const { g, L } = log;
  const { steps, kerfSteps, bedSteps, halfUp, halfAcross, products, faces, worthOf, lengths, startOf } = sawyer;
  const [bottom, top] = centredFaces(g * steps(wide), halfUp(L), g);
  if (bottom < -halfUp(L) - 1e-9 || top > halfUp(L) + 1e-9) return -Infinity;
  const wholeHeight = Math.floor((2 * halfAcross(L)) / g + 1e-6);
  const usable = (ends: readonly number[], length: number) => usableInTurned(ends, length, bottom, top, L, sawyer);
  const flitch = products.map((product) => {
    const known = new Map<number, number>();
    return (low: number) => {
      if (!known.has(low))
        known.set(
          low,
          worthOf(product, (length) => usable(faces(product, low * g), length)),
        );
      return known.get(low)!;
    };
  });
  const under = (face: number): number =>
    products.reduce((best, { thickSteps }, i) => {
      const low = face - thickSteps;
      if (low - kerfSteps < bedSteps) return best;
      const value = flitch[i]!(low);
      return value > 0 ? Math.max(best, value + under(low - kerfSteps)) : best;
    }, 0);
  const over = (low: number): number =>
    products.reduce((best, { thickSteps }, i) => {
      if (low + thickSteps > wholeHeight) return best;
      const value = flitch[i]!(low);
      return value > 0 ? Math.max(best, value + over(low + thickSteps + kerfSteps)) : best;
    }, 0);

  const depth = steps(thick);
  const byValue = log.products.some(({ prices }) => prices.length > 1);
  let best = -Infinity;
  for (let low = bedSteps + kerfSteps; low <= wholeHeight; low++) {
    if (low * g > halfAcross(L) + 1e-9 || (low + depth) * g < halfAcross(L) - 1e-9) continue;
    const wane = log.wane * depth * g;
    const ends = [low * g + wane, (low + depth) * g - wane];
    const long = lengths.filter((length) => startOf(length) >= -1e-9 && usable(ends, length) >= g * steps(wide) - 1e-6);
    if (long.length === 0) continue;
    const own = (byValue ? 0 : (wide * thick * Math.max(...long)) / 12) - log.passCost;
    best = Math.max(best, under(low - kerfSteps) + own + over(low + depth + kerfSteps));
  }
  const kerf = kerfSteps * g;
  return best + jacketsFrom(top + kerf, log, sawyer) + jacketsFrom(-bottom + kerf, log, sawyer);
}

/** The faces of the cant, from the pith: over the bed by whole steps, its middle as near the pith as that lets it. */
function centredFaces(wide: number, radius: number, g: number): [bottom: number, top: number] {
  const steps = Math.round((radius - wide / 2) / g);
  return [steps * g - radius, steps * g - radius + wide];
}
