import type { SmallLog } from "../small-logs";
import { halfAt, type Sawyer } from "./sawyer";

/** A cant of the best width at the best place, sawn through after a quarter turn, and the jackets on both its sides. */
export function cantWorth(log: SmallLog, sawyer: Sawyer): number {
  const { g, L } = log;
  const { steps, kerfSteps, halfUp } = sawyer;
  const radius = halfUp(L);
  let best = 0;
  for (const cantWidth of log.cantWidths) {
    const wide = g * steps(cantWidth + log.widthAllow);
    if (wide > 2 * radius + 1e-9) continue;
    for (const bottom of log.free ? placesFor(wide, radius, g) : [-wide / 2]) {
      const top = bottom + wide;
      const jackets = jacketsFrom(top + kerfSteps * g, log, sawyer) + jacketsFrom(-bottom + kerfSteps * g, log, sawyer);
      best = Math.max(best, throughWorth(bottom, top, log, sawyer) + jackets);
    }
  }
  return best;
}

/** Where the lower face of a cant may lie, from the pith: over the bed by whole steps, the pith inside. */
function placesFor(wide: number, radius: number, g: number): number[] {
  const places: number[] = [];
  for (let step = 0; step * g - radius <= 1e-9; step++)
    if (step * g - radius + wide >= -1e-9 && step * g + wide <= 2 * radius + 1e-9) places.push(step * g - radius);
  return places;
}

/** The turned cant: its faces bound the boards to left and right. */
function throughWorth(bottom: number, top: number, { L }: SmallLog, sawyer: Sawyer): number {
  const { halfAcross, faces, worthOf, fromAnyFace } = sawyer;
  return fromAnyFace(2 * halfAcross(L), (product, lowIn) =>
    worthOf(product, (length) => usableInTurned(faces(product, lowIn), length, bottom, top, L, sawyer)),
  );
}

/** How wide a flitch of the turned cant is over a length. */
export function usableInTurned(
  ends: readonly number[],
  length: number,
  bottom: number,
  top: number,
  L: number,
  { halfAcross, halfUp, startOf }: Sawyer,
): number {
  const z = startOf(length);
  const half = Math.min(...ends.map((y) => halfAt(halfUp(z), halfAcross(z), y - halfAcross(L))));
  return half > 0 ? Math.min(half, top) - Math.max(-half, bottom) : 0;
}

/** The boards outside the cant on one side: heights from the pith outward, since both sides are alike. */
export function jacketsFrom(inner: number, log: SmallLog, sawyer: Sawyer): number {
  const { products, halfAcross, halfUp, kerfSteps, faces, startOf, worthOf } = sawyer;
  let best = 0;
  for (const product of products) {
    const outer = inner + product.thickSteps * log.g;
    if (outer > halfUp(log.L) + 1e-9) continue;
    const ends = faces(product, inner);
    const value = worthOf(product, (length) => {
      const z = startOf(length);
      return 2 * Math.min(...ends.map((y) => halfAt(halfAcross(z), halfUp(z), y)));
    });
    if (value > 0) best = Math.max(best, value + jacketsFrom(outer + kerfSteps * log.g, log, sawyer));
  }
  return best;
}
