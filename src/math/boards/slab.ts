import { mustBeAtLeast, NoAnswer } from "../errors";
import { mean, sum } from "../numbers";
import { IN_PER_FT } from "../units";
import { talliedThicknessIn } from "./tallied-thickness";

/** The customs of measuring a live-edge slab. */
export const SLAB_METHODS = ["mean", "middle", "narrow", "third", "simpson"] as const;

export type SlabMethod = (typeof SLAB_METHODS)[number];

/**
 * Board feet of a live-edge slab from widths read along it at equal steps, first reading at one end, last at the other.
 *
 * @formula BF = T * W / 12 * lengthFt;
 *   W = mean(w) if method = "mean", along(w, 1 / 2) if method = "middle", min(w) if method = "narrow", third if
 *   method = "third", else sum(k * w) / (3 * (n - 1)) [in];
 *   third = min(a, b) if first = last, a if first < last, else b [in]; a = along(w, 1 / 3) [in];
 *   b = along(w, 2 / 3) [in]; first = along(w, 0) [in]; last = along(w, 1) [in];
 *   k = 1 if i * (n - 1 - i) = 0, else 3 - (-1)^i; i = steps(0, n, 1); n = count(w); w = widthsIn;
 *   T = talliedThicknessIn() [in]
 * @source common practice, no source: mean, middle, narrow
 * @source from memory: third, a hardwood rule for tapering boards that was not seen in print
 * @source plain geometry: simpson
 * @range one reading or more; Simpson's rule an odd number of readings, 3 or more
 */
export function slabBoardFeet({
  thicknessIn,
  widthsIn,
  lengthFt,
  method,
}: {
  thicknessIn: number;
  widthsIn: readonly number[];
  lengthFt: number;
  method: SlabMethod;
}): number {
  mustBeAtLeast(1, widthsIn.length, "widths of a slab (readings)");
  return ((talliedThicknessIn(thicknessIn) * WIDTH_BY[method](widthsIn)) / IN_PER_FT) * lengthFt;
}

/**
 * Face area of a live-edge slab, from the mean of widths read along it at equal steps.
 *
 * @formula A = mean(W) / 12 * L; W = widthsIn; L = lengthFt
 * @source common practice, no source
 * @range one reading or more
 */
export function slabAreaFt2({ widthsIn, lengthFt }: { widthsIn: readonly number[]; lengthFt: number }): number {
  mustBeAtLeast(1, widthsIn.length, "widths of a slab (readings)");
  return (mean(widthsIn) / IN_PER_FT) * lengthFt;
}

const WIDTH_BY: Record<SlabMethod, (widthsIn: readonly number[]) => number> = {
  mean,
  middle: (widthsIn) => widthAt(widthsIn, 1 / 2),
  narrow: (widthsIn) => Math.min(...widthsIn),
  third: widthThirdFromNarrowEnd,
  simpson: simpsonWidth,
};

/** Width at a share of the length from the first reading, straight between neighbouring readings. */
function widthAt(widthsIn: readonly number[], share: number): number {
  const position = share * (widthsIn.length - 1);
  const before = widthsIn[Math.floor(position)] as number;
  const after = widthsIn[Math.ceil(position)] as number;
  return before + (after - before) * (position - Math.floor(position));
}

/** Where both ends are alike, the narrower of the two thirds: the answer may not hang on which end was read first. */
function widthThirdFromNarrowEnd(widthsIn: readonly number[]): number {
  const [first, last] = [widthAt(widthsIn, 0), widthAt(widthsIn, 1)];
  const [fromFirst, fromLast] = [widthAt(widthsIn, 1 / 3), widthAt(widthsIn, 2 / 3)];
  if (first === last) return Math.min(fromFirst, fromLast);
  return first < last ? fromFirst : fromLast;
}

/** Parabolas through three readings at a time: ends once, odd readings four times, even ones twice. */
function simpsonWidth(widthsIn: readonly number[]): number {
  const steps = widthsIn.length - 1;
  if (steps < 2 || steps % 2 !== 0)
    throw new NoAnswer(`Simpson's rule: wanted an odd number of widths, 3 or more, got ${widthsIn.length}`);
  const weightOf = (i: number) => (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
  return sum(widthsIn.map((width, i) => weightOf(i) * width)) / (3 * steps);
}
