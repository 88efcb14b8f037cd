import { NEAR } from "../../rounding";
import type { CutJob } from "./cut-job";

/** Worths nearer than this are the same; then fewer passes are better. */
export const SAME_WORTH = NEAR;

/**
 * The best stack of boards under every face, by dynamic programming: faces are counted in scale steps from the end
 * that the stack runs towards.
 */
export interface Stack {
  most: Float64Array;
  boards: Int32Array;
  /** The product to take next under a face; -1 where it is best to stop. */
  next: Int16Array;
}

/** What a board of a product is worth when its first face is at a face of the stack. */
export type WorthAt = (product: number, face: number) => number;

/**
 * Boards touch, one kerf apart. A board may be taken where the face after its kerf is no lower than `lowest`:
 * the bed clearance, or one kerf past the end where the last board needs no cut under it.
 */
export function bestStack(job: CutJob, top: number, lowest: number, worthAt: WorthAt): Stack {
  const size = Math.max(0, top) + 1;
  const stack = { most: new Float64Array(size), boards: new Int32Array(size), next: new Int16Array(size).fill(-1) };
  const drops = job.products.map(({ greenSteps }) => greenSteps + job.kerfSteps);
  for (let face = 0; face < size; face++) {
    for (let product = 0; product < drops.length; product++) {
      const below = face - drops[product]!;
      if (below < lowest) continue;
      const worth = worthAt(product, face);
      if (worth <= 0) continue;
      const total = worth + (below < 0 ? 0 : stack.most[below]!);
      const boards = 1 + (below < 0 ? 0 : stack.boards[below]!);
      const gain = total - stack.most[face]!;
      if (gain < -SAME_WORTH || (gain <= SAME_WORTH && boards >= stack.boards[face]!)) continue;
      stack.most[face] = total;
      stack.boards[face] = boards;
      stack.next[face] = product;
    }
  }
  return stack;
}

/** The boards of the best stack under a face, as products with the face each begins at. */
export function boardsUnder(job: CutJob, stack: Stack, top: number): { product: number; face: number }[] {
  const boards: { product: number; face: number }[] = [];
  for (let face = top; face >= 0 && face < stack.next.length && stack.next[face]! >= 0;) {
    const product = stack.next[face]!;
    boards.push({ product, face });
    face -= job.products[product]!.greenSteps + job.kerfSteps;
  }
  return boards;
}

/** The worth of the best stack under any face. */
export function worthOf(stack: Stack): number {
  return stack.most.reduce((best, worth) => Math.max(best, worth), 0);
}
