import { mustBeBetween } from "../../errors";
import { SLIP } from "../../rounding";
import type { CutJob } from "./cut-job";
import { boardsUnder, SAME_WORTH, worthOf, type Stack, type WorthAt } from "./stack";

/** Where to make the first cut: the face it leaves, and how far it may be moved when the same drops follow. In scale steps. */
export interface FirstCut {
  face: number;
  lowest: number;
  highest: number;
  drops: readonly number[];
}

/** Totals nearer than this read the same on any sheet. */
const SAME_TOTAL = SLIP;

/**
 * The middle of the longest run of first cuts with the greatest worth in the fewest passes; nothing when the log
 * holds no board.
 */
export function firstCut(job: CutJob, stack: Stack, lowest: number, worthAt: WorthAt): FirstCut | undefined {
  if (job.firstCutSteps !== undefined) return firstCutAt(job, stack, job.firstCutSteps);
  const most = worthOf(stack);
  if (most <= 0) return undefined;
  const isBest = (face: number) => stack.most[face]! >= most - SAME_WORTH;
  let fewest = Infinity;
  stack.boards.forEach((boards, face) => (fewest = isBest(face) ? Math.min(fewest, boards) : fewest));
  const [from, to] = longestRun(stack.most.length, (face) => isBest(face) && stack.boards[face] === fewest);
  const first = Math.floor((from + to) / 2);
  const drops = boardsUnder(job, stack, first).map(({ product }) => product);

  const keepsTotal = (face: number) => totalOf(job, drops, face, lowest, worthAt) >= most - SAME_TOTAL;
  let low = first;
  let high = first;
  while (low > 0 && keepsTotal(low - 1)) low--;
  while (high < stack.most.length - 1 && keepsTotal(high + 1)) high++;
  return { face: Math.floor((low + high) / 2), lowest: low, highest: high, drops };
}

/** The first cut where the sawyer wants it; nothing when no board lies under it. */
function firstCutAt(job: CutJob, stack: Stack, face: number): FirstCut | undefined {
  const topIn = (stack.most.length - 1) * job.stepIn;
  mustBeBetween(0, topIn, face * job.stepIn, "first cut (in above the bed)");
  const drops = boardsUnder(job, stack, face).map(({ product }) => product);
  return drops.length === 0 ? undefined : { face, lowest: face, highest: face, drops };
}

/** What the same drops are worth from another first cut; nothing when one of them frees no board. */
function totalOf(job: CutJob, drops: readonly number[], from: number, lowest: number, worthAt: WorthAt): number {
  let face = from;
  let total = 0;
  for (const product of drops) {
    const below = face - job.products[product]!.greenSteps - job.kerfSteps;
    const worth = below < lowest ? 0 : worthAt(product, face);
    if (worth <= 0) return 0;
    total += worth;
    face = below;
  }
  return total;
}

function longestRun(size: number, holds: (at: number) => boolean): [from: number, to: number] {
  let best: [number, number] = [0, -1];
  for (let from = 0; from < size; from++) {
    if (!holds(from)) continue;
    let to = from;
    while (to + 1 < size && holds(to + 1)) to++;
    if (to - from > best[1] - best[0]) best = [from, to];
    from = to;
  }
  return best;
}
