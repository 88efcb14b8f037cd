import type { SmallLog } from "../small-logs";
import { halfAt, priceOf, sawyerOf, type Sawyer, type WorthAt } from "./sawyer";

/** A straight log sawn live, from its best first cut. */
export function liveWorth(log: SmallLog, sawyer: Sawyer): number {
  mustPassTheGuides(sawyer);
  return sawyer.fromAnyFace(2 * sawyer.halfUp(log.L), liveFlitch(log, sawyer));
}

/** What one stack of a straight log sawn live is worth: its first cut in steps, and which product each drop makes. */
export function stackWorth(log: SmallLog, first: number, drops: readonly number[]): number {
  const sawyer = sawyerOf(log);
  mustPassTheGuides(sawyer);
  const worth = liveFlitch(log, sawyer);
  let face = first;
  let total = 0;
  for (const drop of drops) {
    const product = sawyer.products[drop]!;
    const value = worth(product, (face - product.thickSteps) * log.g);
    face -= product.thickSteps + sawyer.kerfSteps;
    if (value === 0 || face < sawyer.bedSteps) return 0;
    total += value;
  }
  return total;
}

function liveFlitch(log: SmallLog, sawyer: Sawyer): WorthAt {
  const { halfAcross, halfUp, guided, faces, startOf, worthOf } = sawyer;
  return (product, lowIn) => {
    const ends = faces(product, lowIn);
    return worthOf(product, (length) => {
      const z = startOf(length);
      return 2 * Math.min(guided, ...ends.map((y) => halfAt(halfAcross(z), halfUp(z), y - pithAt(log, sawyer, z))));
    });
  };
}

/** A bowed log sawn live: a board is straight, and as wide as the log is on its whole way, from station to station. */
export function bowedWorth(log: SmallLog, sawyer: Sawyer): number {
  mustPassTheGuides(sawyer);
  const { L, sweep, way, trim } = log;
  const { halfAcross, halfUp, guided, faces, worthOf, fromAnyFace } = sawyer;
  const stations = Array.from({ length: Math.round(L / 6) + 1 }, (_, i) => i * 6);
  const bow = (z: number) => 4 * sweep * (z / L) * (1 - z / L);
  const rest = -Math.min(...stations.map((z) => way * bow(z) - halfUp(z)));
  const pith = (z: number) => rest + way * bow(z);
  const aside = (z: number) => (way === 0 ? bow(z) : 0);
  const height = Math.max(...stations.map((z) => pith(z) + halfUp(z)));
  return fromAnyFace(height, (product, lowIn) => {
    const ends = faces(product, lowIn);
    const half = (z: number) => Math.min(guided, ...ends.map((y) => halfAt(halfAcross(z), halfUp(z), y - pith(z))));
    return worthOf(product, (length) => {
      let widest = 0;
      for (const start of stations) {
        const end = start + 12 * length + trim;
        const along = stations.filter((z) => z >= start && z <= end);
        if (end > L + 1e-9 || along.some((z) => half(z) === 0)) continue;
        const right = Math.min(...along.map((z) => aside(z) + half(z)));
        const left = Math.max(...along.map((z) => aside(z) - half(z)));
        widest = Math.max(widest, right - left);
      }
      return widest;
    });
  });
}

/** Slabs: the longest length, as wide as the narrow face a third from the small end, if the small end is wide enough. */
export function slabWorth(log: SmallLog, sawyer: Sawyer): number {
  mustPassTheGuides(sawyer);
  const { halfAcross, halfUp, guided, lengths, fromAnyFace } = sawyer;
  const length = Math.max(0, ...lengths);
  return fromAnyFace(2 * halfUp(log.L), (product, lowIn) => {
    const ends = [lowIn, lowIn + product.thickSteps * log.g];
    const widthAt = (z: number) =>
      2 * Math.min(guided, ...ends.map((y) => halfAt(halfAcross(z), halfUp(z), y - pithAt(log, sawyer, z))));
    const wideEnough = widthAt(0) >= log.minWidth - 1e-9;
    const width = wideEnough ? Math.floor(widthAt(log.L / 3) / log.widthStep + 1e-6) * log.widthStep : 0;
    return Math.max(0, (product.tally / 12) * length * width * priceOf(product, width) - log.passCost);
  });
}

/** The height of the pith: as high as half the log where it lies flat, level where it lies split. */
const pithAt = (log: SmallLog, { halfUp }: Sawyer, z: number) => (log.flat ? halfUp(z) : halfUp(log.L));

function mustPassTheGuides({ tooWide }: Sawyer): void {
  if (tooWide) throw new Error("too wide");
}
